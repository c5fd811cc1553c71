"""The automaton's tables. Do not edit: made from the grammar by `python -m shuntwise.house.tables`.

`TERMINALS` are patterns in the order in which they are tried, `KEYWORDS` words that are names elsewhere. A rule is
its symbol, its node's name (None: its children go to the rule above), its length, the places of the children that
are kept, and whether a lone child stands for the node. A state leads by symbol to another, or (below zero) to the
rule ~n that is then reduced. `PART_KINDS` are the words that declare a part, each with an example of what follows.

The module is long because it is a table.
"""

from __future__ import annotations

START, END = 0, 52
IGNORED = frozenset(['COMMENT', 'WS'])

PART_KINDS: dict[str, str] = {
    'coil': 'L1 0.82 mH',
    'tapped coil': 'T1 1.2 mH { tap 0.3 mH }',
    'capacitor': 'C1 6.8 uF',
    'resistor': 'R1 3.3 ohm',
    'lamp': 'B1 5 ohm { hot 58 ohm }',
    'fuse': 'F1 2.5 A',
    'protector': 'F2 0.9 A',
    'attenuator': 'A1 8 ohm { loss 3 dB, most 20 dB }',
    'link': 'K1',
}

TERMINALS: dict[str, str] = {
    'KIND': '(?:tapped[ \t]+coil|coil|capacitor|resistor|lamp|fuse|protector|attenuator|link)(?!\\w)',
    'CODE': '[0-9]+(?:[RKMGLkmunpµμ][0-9]+[BCDGJKM]?|R[0-9]+F|[RLkKMGmunpµμ])(?!\\w)',
    'PAD': '(?!non-polar(?!\\w))[^\\W\\d]\\w*(?:\\.[^\\W\\d]\\w*)?(?:\\+|-(?!-))',
    'FINDING': '[a-z][a-z0-9]*(?:-[a-z0-9]+)*',
    'CONNECTOR': 'connector(?=[ \t\xa0]+[^\\W\\d]|[ \t\xa0]*\\{)',
    'POSITION': 'position(?=[ \t\xa0]+[^\\W\\d]|[ \t\xa0]*\\{)',
    'CHOICE': 'choice(?=[ \t\xa0]+[^\\W\\d]|[ \t\xa0]*\\{)',
    'COMMA_NUMBER': '[0-9]+,[0-9]+(?:[eE][+-]?[0-9]+)?',
    'NUMBER': '(?:[0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)(?:[eE][+-]?[0-9]+(?!\\w))?',
    '_NL': '\r?\n(?:[ \t\xa0]*(?:#[^\n]*)?\r?\n)*',
    'ARROW': '--(?:[ \t\xa0]*(?:#[^\n]*)?\r?\n)*',
    'NAME': 'non-polar(?!\\w)|[^\\W\\d]\\w*',
    'PIN': '[0-9]+(?:\\+|-)',
    'STRING': '"[^"\r\n]*"',
    'WS': '[ \t\x0c\xa0]+',
    'COMMENT': '#[^\n]*',
    'AMPLIFIER': 'amplifier',
    'TESTPOINT': 'testpoint',
    'COUPLING': 'coupling',
    'BECAUSE': 'because',
    'INCLUDE': 'include',
    'LIBRARY': 'library',
    'NETWORK': 'network',
    'THROUGH': 'through',
    'VARIANT': 'variant',
    'DESIGN': 'design',
    'DRIVER': 'driver',
    'EXPECT': 'expect',
    'UNUSED': 'unused',
    'WITHIN': 'within',
    'ABOVE': 'above',
    'ALLOW': 'allow',
    'BELOW': 'below',
    'GIVEN': 'given',
    'INPUT': 'input',
    'LIMIT': 'limit',
    'POSTS': 'posts',
    'FROM': 'from',
    'INTO': 'into',
    'OMIT': 'omit',
    'AND': 'and',
    'FIT': 'fit',
    'LEG': 'leg',
    'LET': 'let',
    'SET': 'set',
    'USE': 'use',
    'AS': 'as',
    'AT': 'at',
    'IN': 'in',
    'OF': 'of',
    'ON': 'on',
    'TO': 'to',
    'CIRCUMFLEX': '\\^',
    'COMMA': ',',
    'DOT': '\\.',
    'EQUAL': '=',
    'LBRACE': '\\{',
    'LPAR': '\\(',
    'MINUS': '\\-',
    'PERCENT': '%',
    'PLUS': '\\+',
    'RBRACE': '\\}',
    'RPAR': '\\)',
    'SLASH': '/',
    'STAR': '\\*',
    'VBAR': '\\|',
}

KEYWORDS: dict[str, str] = {
    'amplifier': 'AMPLIFIER',
    'testpoint': 'TESTPOINT',
    'coupling': 'COUPLING',
    'because': 'BECAUSE',
    'include': 'INCLUDE',
    'library': 'LIBRARY',
    'network': 'NETWORK',
    'through': 'THROUGH',
    'variant': 'VARIANT',
    'design': 'DESIGN',
    'driver': 'DRIVER',
    'expect': 'EXPECT',
    'unused': 'UNUSED',
    'within': 'WITHIN',
    'above': 'ABOVE',
    'allow': 'ALLOW',
    'below': 'BELOW',
    'given': 'GIVEN',
    'input': 'INPUT',
    'limit': 'LIMIT',
    'posts': 'POSTS',
    'from': 'FROM',
    'into': 'INTO',
    'omit': 'OMIT',
    'and': 'AND',
    'fit': 'FIT',
    'leg': 'LEG',
    'let': 'LET',
    'set': 'SET',
    'use': 'USE',
    'as': 'AS',
    'at': 'AT',
    'in': 'IN',
    'of': 'OF',
    'on': 'ON',
    'to': 'TO',
}

RULES: tuple[tuple[str, str | None, int, tuple[int, ...], bool], ...] = (
    ('__block_star_12', None, 2, (0, 1), False),  # __block_star_12: item _sep
    ('__block_star_12', None, 3, (0, 1, 2), False),  # __block_star_12: __block_star_12 item _sep
    ('__body_star_11', None, 2, (0, 1), False),  # __body_star_11: entry _sep
    ('__body_star_11', None, 3, (0, 1, 2), False),  # __body_star_11: __body_star_11 entry _sep
    ('__expect_star_8', None, 1, (0,), False),  # __expect_star_8: clause
    ('__expect_star_8', None, 2, (0, 1), False),  # __expect_star_8: __expect_star_8 clause
    ('__given_star_6', None, 2, (1,), False),  # __given_star_6: COMMA param
    ('__given_star_6', None, 3, (0, 2), False),  # __given_star_6: __given_star_6 COMMA param
    ('__group_star_4', None, 4, (3,), False),  # __group_star_4: _NL VBAR _NL chain
    ('__group_star_4', None, 3, (2,), False),  # __group_star_4: _NL VBAR chain
    ('__group_star_4', None, 3, (2,), False),  # __group_star_4: VBAR _NL chain
    ('__group_star_4', None, 2, (1,), False),  # __group_star_4: VBAR chain
    ('__group_star_4', None, 5, (0, 4), False),  # __group_star_4: __group_star_4 _NL VBAR _NL chain
    ('__group_star_4', None, 4, (0, 3), False),  # __group_star_4: __group_star_4 _NL VBAR chain
    ('__group_star_4', None, 4, (0, 3), False),  # __group_star_4: __group_star_4 VBAR _NL chain
    ('__group_star_4', None, 3, (0, 2), False),  # __group_star_4: __group_star_4 VBAR chain
    ('__in_variants_star_9', None, 2, (1,), False),  # __in_variants_star_9: AND together
    ('__in_variants_star_9', None, 3, (0, 2), False),  # __in_variants_star_9: __in_variants_star_9 AND together
    ('__leg_star_2', None, 2, (1,), False),  # __leg_star_2: AND NAME
    ('__leg_star_2', None, 3, (0, 2), False),  # __leg_star_2: __leg_star_2 AND NAME
    ('__network_star_5', None, 2, (1,), False),  # __network_star_5: COMMA NAME
    ('__network_star_5', None, 3, (0, 2), False),  # __network_star_5: __network_star_5 COMMA NAME
    ('__omit_star_7', None, 2, (1,), False),  # __omit_star_7: AND path
    ('__omit_star_7', None, 3, (0, 2), False),  # __omit_star_7: __omit_star_7 AND path
    ('__path_star_13', None, 2, (1,), False),  # __path_star_13: DOT NAME
    ('__path_star_13', None, 3, (0, 2), False),  # __path_star_13: __path_star_13 DOT NAME
    ('__pins_star_1', None, 2, (0, 1), False),  # __pins_star_1: pin _pin_sep
    ('__pins_star_1', None, 3, (0, 1, 2), False),  # __pins_star_1: __pins_star_1 pin _pin_sep
    ('__start_star_0', None, 2, (0,), False),  # __start_star_0: entry _NL
    ('__start_star_0', None, 3, (0, 1), False),  # __start_star_0: __start_star_0 entry _NL
    ('__together_star_10', None, 2, (1,), False),  # __together_star_10: PLUS path
    ('__together_star_10', None, 3, (0, 2), False),  # __together_star_10: __together_star_10 PLUS path
    ('__walk_star_3', None, 2, (0, 1), False),  # __walk_star_3: ARROW station
    ('__walk_star_3', None, 3, (0, 1, 2), False),  # __walk_star_3: __walk_star_3 ARROW station
    ('_pin_sep', None, 2, (), False),  # _pin_sep: COMMA _NL
    ('_pin_sep', None, 1, (), False),  # _pin_sep: COMMA
    ('_pin_sep', None, 1, (), False),  # _pin_sep: _NL
    ('_sep', None, 2, (), False),  # _sep: COMMA _NL
    ('_sep', None, 1, (), False),  # _sep: COMMA
    ('_sep', None, 1, (), False),  # _sep: _NL
    ('allow', 'allow', 7, (1, 3, 4, 6), False),  # allow: ALLOW FINDING ON path in_variants BECAUSE STRING
    ('allow', 'allow', 6, (1, 3, 5), False),  # allow: ALLOW FINDING ON path BECAUSE STRING
    ('allow', 'allow', 5, (1, 2, 4), False),  # allow: ALLOW FINDING in_variants BECAUSE STRING
    ('allow', 'allow', 4, (1, 3), False),  # allow: ALLOW FINDING BECAUSE STRING
    ('amplifier', 'amplifier', 5, (1, 3, 4), False),  # amplifier: AMPLIFIER expr INTO expr block
    ('amplifier', 'amplifier', 4, (1, 3), False),  # amplifier: AMPLIFIER expr INTO expr
    ('atom', 'number', 2, (0, 1), False),  # atom: NUMBER NAME
    ('atom', 'number', 2, (0, 1), False),  # atom: NUMBER PERCENT
    ('atom', 'number', 1, (0,), False),  # atom: NUMBER
    ('atom', 'number', 2, (0, 1), False),  # atom: COMMA_NUMBER NAME
    ('atom', 'number', 2, (0, 1), False),  # atom: COMMA_NUMBER PERCENT
    ('atom', 'number', 1, (0,), False),  # atom: COMMA_NUMBER
    ('atom', 'code', 1, (0,), False),  # atom: CODE
    ('atom', 'name', 1, (0,), False),  # atom: NAME
    ('atom', 'group_expr', 3, (1,), False),  # atom: LPAR expr RPAR
    ('block', 'block', 5, (2, 3), False),  # block: LBRACE _NL __block_star_12 item RBRACE
    ('block', 'block', 4, (2,), False),  # block: LBRACE _NL __block_star_12 RBRACE
    ('block', 'block', 4, (2,), False),  # block: LBRACE _NL item RBRACE
    ('block', 'block', 3, (), False),  # block: LBRACE _NL RBRACE
    ('block', 'block', 4, (1, 2), False),  # block: LBRACE __block_star_12 item RBRACE
    ('block', 'block', 3, (1,), False),  # block: LBRACE __block_star_12 RBRACE
    ('block', 'block', 3, (1,), False),  # block: LBRACE item RBRACE
    ('block', 'block', 2, (), False),  # block: LBRACE RBRACE
    ('body', 'body', 5, (2, 3), False),  # body: LBRACE _NL __body_star_11 entry RBRACE
    ('body', 'body', 4, (2,), False),  # body: LBRACE _NL __body_star_11 RBRACE
    ('body', 'body', 4, (2,), False),  # body: LBRACE _NL entry RBRACE
    ('body', 'body', 3, (), False),  # body: LBRACE _NL RBRACE
    ('body', 'body', 4, (1, 2), False),  # body: LBRACE __body_star_11 entry RBRACE
    ('body', 'body', 3, (1,), False),  # body: LBRACE __body_star_11 RBRACE
    ('body', 'body', 3, (1,), False),  # body: LBRACE entry RBRACE
    ('body', 'body', 2, (), False),  # body: LBRACE RBRACE
    ('chain', 'chain', 2, (0, 1), False),  # chain: station __walk_star_3
    ('chain', 'chain', 1, (0,), False),  # chain: station
    ('choice', 'choice', 4, (0, 1, 2, 3), False),  # choice: CHOICE NAME STRING body
    ('choice', 'choice', 3, (0, 1, 2), False),  # choice: CHOICE NAME body
    ('clause', 'at', 2, (1,), False),  # clause: AT expr
    ('clause', 'within', 2, (1,), False),  # clause: WITHIN expr
    ('clause', 'above', 2, (1,), False),  # clause: ABOVE expr
    ('clause', 'below', 2, (1,), False),  # clause: BELOW expr
    ('clause', 'from_to', 4, (0, 1, 3), False),  # clause: FROM expr TO expr
    ('connector', 'connector', 4, (0, 1, 2, 3), False),  # connector: CONNECTOR NAME STRING pins
    ('connector', 'connector', 5, (0, 1, 2, 4), False),  # connector: CONNECTOR NAME STRING THROUGH NAME
    ('connector', 'connector', 3, (0, 1, 2), False),  # connector: CONNECTOR NAME pins
    ('connector', 'connector', 4, (0, 1, 3), False),  # connector: CONNECTOR NAME THROUGH NAME
    ('coupling', 'coupling', 5, (1, 3, 4), False),  # coupling: COUPLING path AND path expr
    ('design', 'design', 2, (1,), False),  # design: DESIGN STRING
    ('driver', 'driver', 4, (1, 2, 3), False),  # driver: DRIVER NAME expr block
    ('driver', 'driver', 3, (1, 2), False),  # driver: DRIVER NAME expr
    ('driver', 'driver', 3, (1, 2), False),  # driver: DRIVER NAME block
    ('driver', 'driver', 2, (1,), False),  # driver: DRIVER NAME
    ('entry', 'entry', 1, (0,), True),  # entry: design
    ('entry', 'entry', 1, (0,), True),  # entry: amplifier
    ('entry', 'entry', 1, (0,), True),  # entry: input
    ('entry', 'entry', 1, (0,), True),  # entry: posts
    ('entry', 'entry', 1, (0,), True),  # entry: connector
    ('entry', 'entry', 1, (0,), True),  # entry: driver
    ('entry', 'entry', 1, (0,), True),  # entry: part
    ('entry', 'entry', 1, (0,), True),  # entry: coupling
    ('entry', 'entry', 1, (0,), True),  # entry: let
    ('entry', 'entry', 1, (0,), True),  # entry: network
    ('entry', 'entry', 1, (0,), True),  # entry: use
    ('entry', 'entry', 1, (0,), True),  # entry: leg
    ('entry', 'entry', 1, (0,), True),  # entry: walk
    ('entry', 'entry', 1, (0,), True),  # entry: testpoint
    ('entry', 'entry', 1, (0,), True),  # entry: omit
    ('entry', 'entry', 1, (0,), True),  # entry: fit
    ('entry', 'entry', 1, (0,), True),  # entry: set
    ('entry', 'entry', 1, (0,), True),  # entry: variant
    ('entry', 'entry', 1, (0,), True),  # entry: choice
    ('entry', 'entry', 1, (0,), True),  # entry: position
    ('entry', 'entry', 1, (0,), True),  # entry: include
    ('entry', 'entry', 1, (0,), True),  # entry: expect
    ('entry', 'entry', 1, (0,), True),  # entry: allow
    ('entry', 'entry', 1, (0,), True),  # entry: limit
    ('expect', 'expect', 7, (1, 3, 4, 5, 6), False),  # expect: EXPECT NAME OF path __omit_star_7 is __expect_star_8
    ('expect', 'expect', 6, (1, 3, 4, 5), False),  # expect: EXPECT NAME OF path __omit_star_7 is
    ('expect', 'expect', 6, (1, 3, 4, 5), False),  # expect: EXPECT NAME OF path __omit_star_7 __expect_star_8
    ('expect', 'expect', 5, (1, 3, 4), False),  # expect: EXPECT NAME OF path __omit_star_7
    ('expect', 'expect', 6, (1, 3, 4, 5), False),  # expect: EXPECT NAME OF path is __expect_star_8
    ('expect', 'expect', 5, (1, 3, 4), False),  # expect: EXPECT NAME OF path is
    ('expect', 'expect', 5, (1, 3, 4), False),  # expect: EXPECT NAME OF path __expect_star_8
    ('expect', 'expect', 4, (1, 3), False),  # expect: EXPECT NAME OF path
    ('expect', 'expect', 4, (1, 2, 3), False),  # expect: EXPECT NAME is __expect_star_8
    ('expect', 'expect', 3, (1, 2), False),  # expect: EXPECT NAME is
    ('expect', 'expect', 3, (1, 2), False),  # expect: EXPECT NAME __expect_star_8
    ('expect', 'expect', 2, (1,), False),  # expect: EXPECT NAME
    ('expr', 'expr', 1, (0,), True),  # expr: sum
    ('fit', 'fit', 3, (1, 2), False),  # fit: FIT path __omit_star_7
    ('fit', 'fit', 2, (1,), False),  # fit: FIT path
    ('given', 'given', 3, (1, 2), False),  # given: GIVEN param __given_star_6
    ('given', 'given', 2, (1,), False),  # given: GIVEN param
    ('group', 'group', 6, (2, 3), False),  # group: LPAR _NL chain __group_star_4 _NL RPAR
    ('group', 'group', 5, (2, 3), False),  # group: LPAR _NL chain __group_star_4 RPAR
    ('group', 'group', 5, (2,), False),  # group: LPAR _NL chain _NL RPAR
    ('group', 'group', 4, (2,), False),  # group: LPAR _NL chain RPAR
    ('group', 'group', 5, (1, 2), False),  # group: LPAR chain __group_star_4 _NL RPAR
    ('group', 'group', 4, (1, 2), False),  # group: LPAR chain __group_star_4 RPAR
    ('group', 'group', 4, (1,), False),  # group: LPAR chain _NL RPAR
    ('group', 'group', 3, (1,), False),  # group: LPAR chain RPAR
    ('in_variants', 'in_variants', 3, (1, 2), False),  # in_variants: IN together __in_variants_star_9
    ('in_variants', 'in_variants', 2, (1,), False),  # in_variants: IN together
    ('include', 'include', 4, (1, 2), False),  # include: INCLUDE STRING FROM LIBRARY
    ('include', 'include', 2, (1,), False),  # include: INCLUDE STRING
    ('input', 'input', 2, (1,), False),  # input: INPUT NAME
    ('is', 'is', 1, (0,), False),  # is: expr
    ('item', 'bare', 1, (0,), False),  # item: expr
    ('item', 'keyed', 2, (0, 1), False),  # item: NAME expr
    ('item', 'texted', 2, (0, 1), False),  # item: NAME STRING
    ('leg', 'leg', 4, (1, 2, 3), False),  # leg: LEG NAME __leg_star_2 body
    ('leg', 'leg', 3, (1, 2), False),  # leg: LEG NAME body
    ('let', 'let', 4, (1, 3), False),  # let: LET NAME EQUAL expr
    ('limit', 'limit', 3, (1, 2), False),  # limit: LIMIT FINDING expr
    ('network', 'network', 8, (1, 3, 4, 6, 7), False),  # network: NETWORK NAME LPAR NAME __network_star_5 RPAR given body
    ('network', 'network', 7, (1, 3, 4, 6), False),  # network: NETWORK NAME LPAR NAME __network_star_5 RPAR body
    ('network', 'network', 7, (1, 3, 5, 6), False),  # network: NETWORK NAME LPAR NAME RPAR given body
    ('network', 'network', 6, (1, 3, 5), False),  # network: NETWORK NAME LPAR NAME RPAR body
    ('omit', 'omit', 3, (1, 2), False),  # omit: OMIT path __omit_star_7
    ('omit', 'omit', 2, (1,), False),  # omit: OMIT path
    ('param', 'param', 3, (0, 2), False),  # param: NAME EQUAL expr
    ('param', 'param', 1, (0,), False),  # param: NAME
    ('part', 'part', 4, (0, 1, 2, 3), False),  # part: KIND NAME expr block
    ('part', 'part', 3, (0, 1, 2), False),  # part: KIND NAME expr
    ('part', 'part', 3, (0, 1, 2), False),  # part: KIND NAME block
    ('part', 'part', 2, (0, 1), False),  # part: KIND NAME
    ('path', 'path', 2, (0, 1), False),  # path: NAME __path_star_13
    ('path', 'path', 1, (0,), False),  # path: NAME
    ('pin', 'pin', 2, (0, 1), False),  # pin: PIN PAD
    ('pin', 'pin', 2, (0,), False),  # pin: PIN UNUSED
    ('pin', 'pin', 2, (0, 1), False),  # pin: NAME PAD
    ('pin', 'pin', 2, (0,), False),  # pin: NAME UNUSED
    ('pins', 'pins', 5, (2, 3), False),  # pins: LBRACE _NL __pins_star_1 pin RBRACE
    ('pins', 'pins', 4, (2,), False),  # pins: LBRACE _NL __pins_star_1 RBRACE
    ('pins', 'pins', 4, (2,), False),  # pins: LBRACE _NL pin RBRACE
    ('pins', 'pins', 3, (), False),  # pins: LBRACE _NL RBRACE
    ('pins', 'pins', 4, (1, 2), False),  # pins: LBRACE __pins_star_1 pin RBRACE
    ('pins', 'pins', 3, (1,), False),  # pins: LBRACE __pins_star_1 RBRACE
    ('pins', 'pins', 3, (1,), False),  # pins: LBRACE pin RBRACE
    ('pins', 'pins', 2, (), False),  # pins: LBRACE RBRACE
    ('position', 'position', 4, (0, 1, 2, 3), False),  # position: POSITION NAME STRING body
    ('position', 'position', 3, (0, 1, 2), False),  # position: POSITION NAME body
    ('posts', 'posts', 2, (1,), False),  # posts: POSTS NAME
    ('power', 'power', 1, (0,), True),  # power: unary
    ('power', 'raise_to', 3, (0, 2), False),  # power: unary CIRCUMFLEX power
    ('product', 'product', 1, (0,), True),  # product: power
    ('product', 'multiply', 3, (0, 2), False),  # product: product STAR power
    ('product', 'divide', 3, (0, 2), False),  # product: product SLASH power
    ('set', 'set', 4, (1, 3), False),  # set: SET path EQUAL expr
    ('start', 'start', 2, (1,), False),  # start: _NL __start_star_0
    ('start', 'start', 1, (), False),  # start: _NL
    ('start', 'start', 1, (0,), False),  # start: __start_star_0
    ('start', 'start', 0, (), False),  # start: nothing
    ('station', 'pad', 1, (0,), False),  # station: PAD
    ('station', 'station', 1, (0,), True),  # station: path
    ('station', 'station', 1, (0,), True),  # station: group
    ('sum', 'sum', 1, (0,), True),  # sum: product
    ('sum', 'add', 3, (0, 2), False),  # sum: sum PLUS product
    ('sum', 'subtract', 3, (0, 2), False),  # sum: sum MINUS product
    ('testpoint', 'testpoint', 2, (1,), False),  # testpoint: TESTPOINT NAME
    ('together', 'together', 2, (0, 1), False),  # together: path __together_star_10
    ('together', 'together', 1, (0,), False),  # together: path
    ('unary', 'unary', 1, (0,), True),  # unary: atom
    ('unary', 'negate', 2, (1,), False),  # unary: MINUS unary
    ('use', 'use', 5, (1, 3, 4), False),  # use: USE NAME AS NAME block
    ('use', 'use', 4, (1, 3), False),  # use: USE NAME AS NAME
    ('variant', 'variant', 4, (1, 2, 3), False),  # variant: VARIANT NAME STRING body
    ('variant', 'variant', 3, (1, 2), False),  # variant: VARIANT NAME body
    ('walk', 'walk', 2, (0, 1), False),  # walk: station __walk_star_3
    ('walk', 'walk', 1, (0,), False),  # walk: station
)

STATES: tuple[dict[str, int], ...] = (
    {'$END': -191, 'ALLOW': 1, 'AMPLIFIER': 2, 'CHOICE': 3, 'CONNECTOR': 4, 'COUPLING': 5, 'DESIGN': 6, 'DRIVER': 7, 'EXPECT': 8, 'FIT': 9, 'INCLUDE': 10, 'INPUT': 11, 'KIND': 12, 'LEG': 13, 'LET': 14, 'LIMIT': 15, 'LPAR': 16, 'NAME': 17, 'NETWORK': 18, 'OMIT': 19, 'PAD': 20, 'POSITION': 21, 'POSTS': 22, 'SET': 23, 'TESTPOINT': 24, 'USE': 25, 'VARIANT': 26, '_NL': 27, '__start_star_0': 28, 'allow': 29, 'amplifier': 30, 'choice': 31, 'connector': 32, 'coupling': 33, 'design': 34, 'driver': 35, 'entry': 36, 'expect': 37, 'fit': 38, 'group': 39, 'include': 40, 'input': 41, 'leg': 42, 'let': 43, 'limit': 44, 'network': 45, 'omit': 46, 'part': 47, 'path': 48, 'position': 49, 'posts': 50, 'set': 51, 'start': 52, 'station': 53, 'testpoint': 54, 'use': 55, 'variant': 56, 'walk': 57},
    {'FINDING': 58},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'expr': 66, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'NAME': 71},
    {'NAME': 72},
    {'NAME': 17, 'path': 73},
    {'STRING': 74},
    {'NAME': 75},
    {'NAME': 76},
    {'NAME': 17, 'path': 77},
    {'STRING': 78},
    {'NAME': 79},
    {'NAME': 80},
    {'NAME': 81},
    {'NAME': 82},
    {'FINDING': 83},
    {'LPAR': 16, 'NAME': 17, 'PAD': 20, '_NL': 84, 'chain': 85, 'group': 39, 'path': 48, 'station': 86},
    {'ABOVE': -166, 'AND': -166, 'ARROW': -166, 'AT': -166, 'BECAUSE': -166, 'BELOW': -166, 'CODE': -166, 'COMMA': -166, 'COMMA_NUMBER': -166, 'DOT': 87, 'EQUAL': -166, 'FROM': -166, 'IN': -166, 'LPAR': -166, 'MINUS': -166, 'NAME': -166, 'NUMBER': -166, 'PLUS': -166, 'RBRACE': -166, 'RPAR': -166, 'VBAR': -166, 'WITHIN': -166, '_NL': -166, '__path_star_13': 88},
    {'NAME': 89},
    {'NAME': 17, 'path': 90},
    {'ARROW': -192, 'COMMA': -192, 'RBRACE': -192, 'RPAR': -192, 'VBAR': -192, '_NL': -192},
    {'NAME': 91},
    {'NAME': 92},
    {'NAME': 17, 'path': 93},
    {'NAME': 94},
    {'NAME': 95},
    {'NAME': 96},
    {'$END': -189, 'ALLOW': 1, 'AMPLIFIER': 2, 'CHOICE': 3, 'CONNECTOR': 4, 'COUPLING': 5, 'DESIGN': 6, 'DRIVER': 7, 'EXPECT': 8, 'FIT': 9, 'INCLUDE': 10, 'INPUT': 11, 'KIND': 12, 'LEG': 13, 'LET': 14, 'LIMIT': 15, 'LPAR': 16, 'NAME': 17, 'NETWORK': 18, 'OMIT': 19, 'PAD': 20, 'POSITION': 21, 'POSTS': 22, 'SET': 23, 'TESTPOINT': 24, 'USE': 25, 'VARIANT': 26, '__start_star_0': 97, 'allow': 29, 'amplifier': 30, 'choice': 31, 'connector': 32, 'coupling': 33, 'design': 34, 'driver': 35, 'entry': 36, 'expect': 37, 'fit': 38, 'group': 39, 'include': 40, 'input': 41, 'leg': 42, 'let': 43, 'limit': 44, 'network': 45, 'omit': 46, 'part': 47, 'path': 48, 'position': 49, 'posts': 50, 'set': 51, 'station': 53, 'testpoint': 54, 'use': 55, 'variant': 56, 'walk': 57},
    {'$END': -190, 'ALLOW': 1, 'AMPLIFIER': 2, 'CHOICE': 3, 'CONNECTOR': 4, 'COUPLING': 5, 'DESIGN': 6, 'DRIVER': 7, 'EXPECT': 8, 'FIT': 9, 'INCLUDE': 10, 'INPUT': 11, 'KIND': 12, 'LEG': 13, 'LET': 14, 'LIMIT': 15, 'LPAR': 16, 'NAME': 17, 'NETWORK': 18, 'OMIT': 19, 'PAD': 20, 'POSITION': 21, 'POSTS': 22, 'SET': 23, 'TESTPOINT': 24, 'USE': 25, 'VARIANT': 26, 'allow': 29, 'amplifier': 30, 'choice': 31, 'connector': 32, 'coupling': 33, 'design': 34, 'driver': 35, 'entry': 98, 'expect': 37, 'fit': 38, 'group': 39, 'include': 40, 'input': 41, 'leg': 42, 'let': 43, 'limit': 44, 'network': 45, 'omit': 46, 'part': 47, 'path': 48, 'position': 49, 'posts': 50, 'set': 51, 'station': 53, 'testpoint': 54, 'use': 55, 'variant': 56, 'walk': 57},
    {'COMMA': -113, 'RBRACE': -113, '_NL': -113},
    {'COMMA': -92, 'RBRACE': -92, '_NL': -92},
    {'COMMA': -109, 'RBRACE': -109, '_NL': -109},
    {'COMMA': -95, 'RBRACE': -95, '_NL': -95},
    {'COMMA': -98, 'RBRACE': -98, '_NL': -98},
    {'COMMA': -91, 'RBRACE': -91, '_NL': -91},
    {'COMMA': -96, 'RBRACE': -96, '_NL': -96},
    {'_NL': 99},
    {'COMMA': -112, 'RBRACE': -112, '_NL': -112},
    {'COMMA': -106, 'RBRACE': -106, '_NL': -106},
    {'ARROW': -194, 'COMMA': -194, 'RBRACE': -194, 'RPAR': -194, 'VBAR': -194, '_NL': -194},
    {'COMMA': -111, 'RBRACE': -111, '_NL': -111},
    {'COMMA': -93, 'RBRACE': -93, '_NL': -93},
    {'COMMA': -102, 'RBRACE': -102, '_NL': -102},
    {'COMMA': -99, 'RBRACE': -99, '_NL': -99},
    {'COMMA': -114, 'RBRACE': -114, '_NL': -114},
    {'COMMA': -100, 'RBRACE': -100, '_NL': -100},
    {'COMMA': -105, 'RBRACE': -105, '_NL': -105},
    {'COMMA': -97, 'RBRACE': -97, '_NL': -97},
    {'ARROW': -193, 'COMMA': -193, 'RBRACE': -193, 'RPAR': -193, 'VBAR': -193, '_NL': -193},
    {'COMMA': -110, 'RBRACE': -110, '_NL': -110},
    {'COMMA': -94, 'RBRACE': -94, '_NL': -94},
    {'COMMA': -107, 'RBRACE': -107, '_NL': -107},
    {},
    {'ARROW': 100, 'COMMA': -208, 'RBRACE': -208, '_NL': -208, '__walk_star_3': 101},
    {'COMMA': -104, 'RBRACE': -104, '_NL': -104},
    {'COMMA': -101, 'RBRACE': -101, '_NL': -101},
    {'COMMA': -108, 'RBRACE': -108, '_NL': -108},
    {'COMMA': -103, 'RBRACE': -103, '_NL': -103},
    {'BECAUSE': 102, 'IN': 103, 'ON': 104, 'in_variants': 105},
    {'ABOVE': -53, 'AT': -53, 'BELOW': -53, 'CIRCUMFLEX': -53, 'COMMA': -53, 'FROM': -53, 'INTO': -53, 'LBRACE': -53, 'MINUS': -53, 'PLUS': -53, 'RBRACE': -53, 'RPAR': -53, 'SLASH': -53, 'STAR': -53, 'TO': -53, 'WITHIN': -53, '_NL': -53},
    {'ABOVE': -52, 'AT': -52, 'BELOW': -52, 'CIRCUMFLEX': -52, 'COMMA': -52, 'FROM': -52, 'INTO': -52, 'LBRACE': -52, 'MINUS': -52, 'NAME': 106, 'PERCENT': 107, 'PLUS': -52, 'RBRACE': -52, 'RPAR': -52, 'SLASH': -52, 'STAR': -52, 'TO': -52, 'WITHIN': -52, '_NL': -52},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'expr': 108, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'unary': 109},
    {'ABOVE': -54, 'AT': -54, 'BELOW': -54, 'CIRCUMFLEX': -54, 'COMMA': -54, 'FROM': -54, 'INTO': -54, 'LBRACE': -54, 'MINUS': -54, 'PLUS': -54, 'RBRACE': -54, 'RPAR': -54, 'SLASH': -54, 'STAR': -54, 'TO': -54, 'WITHIN': -54, '_NL': -54},
    {'ABOVE': -49, 'AT': -49, 'BELOW': -49, 'CIRCUMFLEX': -49, 'COMMA': -49, 'FROM': -49, 'INTO': -49, 'LBRACE': -49, 'MINUS': -49, 'NAME': 110, 'PERCENT': 111, 'PLUS': -49, 'RBRACE': -49, 'RPAR': -49, 'SLASH': -49, 'STAR': -49, 'TO': -49, 'WITHIN': -49, '_NL': -49},
    {'ABOVE': -201, 'AT': -201, 'BELOW': -201, 'CIRCUMFLEX': -201, 'COMMA': -201, 'FROM': -201, 'INTO': -201, 'LBRACE': -201, 'MINUS': -201, 'PLUS': -201, 'RBRACE': -201, 'RPAR': -201, 'SLASH': -201, 'STAR': -201, 'TO': -201, 'WITHIN': -201, '_NL': -201},
    {'INTO': 112},
    {'ABOVE': -184, 'AT': -184, 'BELOW': -184, 'COMMA': -184, 'FROM': -184, 'INTO': -184, 'LBRACE': -184, 'MINUS': -184, 'PLUS': -184, 'RBRACE': -184, 'RPAR': -184, 'SLASH': -184, 'STAR': -184, 'TO': -184, 'WITHIN': -184, '_NL': -184},
    {'ABOVE': -195, 'AT': -195, 'BELOW': -195, 'COMMA': -195, 'FROM': -195, 'INTO': -195, 'LBRACE': -195, 'MINUS': -195, 'PLUS': -195, 'RBRACE': -195, 'RPAR': -195, 'SLASH': 113, 'STAR': 114, 'TO': -195, 'WITHIN': -195, '_NL': -195},
    {'ABOVE': -127, 'AT': -127, 'BELOW': -127, 'COMMA': -127, 'FROM': -127, 'INTO': -127, 'LBRACE': -127, 'MINUS': 115, 'PLUS': 116, 'RBRACE': -127, 'RPAR': -127, 'TO': -127, 'WITHIN': -127, '_NL': -127},
    {'ABOVE': -182, 'AT': -182, 'BELOW': -182, 'CIRCUMFLEX': 117, 'COMMA': -182, 'FROM': -182, 'INTO': -182, 'LBRACE': -182, 'MINUS': -182, 'PLUS': -182, 'RBRACE': -182, 'RPAR': -182, 'SLASH': -182, 'STAR': -182, 'TO': -182, 'WITHIN': -182, '_NL': -182},
    {'LBRACE': 118, 'STRING': 119, 'body': 120},
    {'LBRACE': 121, 'STRING': 122, 'THROUGH': 123, 'pins': 124},
    {'AND': 125},
    {'COMMA': -86, 'RBRACE': -86, '_NL': -86},
    {'CODE': 59, 'COMMA': -90, 'COMMA_NUMBER': 60, 'LBRACE': 126, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'RBRACE': -90, '_NL': -90, 'atom': 65, 'block': 127, 'expr': 128, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'ABOVE': 129, 'AT': 130, 'BELOW': 131, 'CODE': 59, 'COMMA': -126, 'COMMA_NUMBER': 60, 'FROM': 132, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'OF': 133, 'RBRACE': -126, 'WITHIN': 134, '_NL': -126, '__expect_star_8': 135, 'atom': 65, 'clause': 136, 'expr': 137, 'is': 138, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'AND': 139, 'COMMA': -129, 'RBRACE': -129, '_NL': -129, '__omit_star_7': 140},
    {'COMMA': -143, 'FROM': 141, 'RBRACE': -143, '_NL': -143},
    {'COMMA': -144, 'RBRACE': -144, '_NL': -144},
    {'CODE': 59, 'COMMA': -164, 'COMMA_NUMBER': 60, 'LBRACE': 126, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'RBRACE': -164, '_NL': -164, 'atom': 65, 'block': 142, 'expr': 143, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'AND': 144, 'LBRACE': 118, '__leg_star_2': 145, 'body': 146},
    {'EQUAL': 147},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'expr': 148, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'LPAR': 16, 'NAME': 17, 'PAD': 20, 'chain': 149, 'group': 39, 'path': 48, 'station': 86},
    {'RPAR': 150, 'VBAR': 151, '_NL': 152, '__group_star_4': 153},
    {'ARROW': 100, 'RPAR': -73, 'VBAR': -73, '_NL': -73, '__walk_star_3': 154},
    {'NAME': 155},
    {'ABOVE': -165, 'AND': -165, 'ARROW': -165, 'AT': -165, 'BECAUSE': -165, 'BELOW': -165, 'CODE': -165, 'COMMA': -165, 'COMMA_NUMBER': -165, 'DOT': 156, 'EQUAL': -165, 'FROM': -165, 'IN': -165, 'LPAR': -165, 'MINUS': -165, 'NAME': -165, 'NUMBER': -165, 'PLUS': -165, 'RBRACE': -165, 'RPAR': -165, 'VBAR': -165, 'WITHIN': -165, '_NL': -165},
    {'LPAR': 157},
    {'AND': 139, 'COMMA': -158, 'RBRACE': -158, '_NL': -158, '__omit_star_7': 158},
    {'LBRACE': 118, 'STRING': 159, 'body': 160},
    {'COMMA': -181, 'RBRACE': -181, '_NL': -181},
    {'EQUAL': 161},
    {'COMMA': -198, 'RBRACE': -198, '_NL': -198},
    {'AS': 162},
    {'LBRACE': 118, 'STRING': 163, 'body': 164},
    {'$END': -188, 'ALLOW': 1, 'AMPLIFIER': 2, 'CHOICE': 3, 'CONNECTOR': 4, 'COUPLING': 5, 'DESIGN': 6, 'DRIVER': 7, 'EXPECT': 8, 'FIT': 9, 'INCLUDE': 10, 'INPUT': 11, 'KIND': 12, 'LEG': 13, 'LET': 14, 'LIMIT': 15, 'LPAR': 16, 'NAME': 17, 'NETWORK': 18, 'OMIT': 19, 'PAD': 20, 'POSITION': 21, 'POSTS': 22, 'SET': 23, 'TESTPOINT': 24, 'USE': 25, 'VARIANT': 26, 'allow': 29, 'amplifier': 30, 'choice': 31, 'connector': 32, 'coupling': 33, 'design': 34, 'driver': 35, 'entry': 98, 'expect': 37, 'fit': 38, 'group': 39, 'include': 40, 'input': 41, 'leg': 42, 'let': 43, 'limit': 44, 'network': 45, 'omit': 46, 'part': 47, 'path': 48, 'position': 49, 'posts': 50, 'set': 51, 'station': 53, 'testpoint': 54, 'use': 55, 'variant': 56, 'walk': 57},
    {'_NL': 165},
    {'$END': -29, 'ALLOW': -29, 'AMPLIFIER': -29, 'CHOICE': -29, 'CONNECTOR': -29, 'COUPLING': -29, 'DESIGN': -29, 'DRIVER': -29, 'EXPECT': -29, 'FIT': -29, 'INCLUDE': -29, 'INPUT': -29, 'KIND': -29, 'LEG': -29, 'LET': -29, 'LIMIT': -29, 'LPAR': -29, 'NAME': -29, 'NETWORK': -29, 'OMIT': -29, 'PAD': -29, 'POSITION': -29, 'POSTS': -29, 'SET': -29, 'TESTPOINT': -29, 'USE': -29, 'VARIANT': -29},
    {'LPAR': 16, 'NAME': 17, 'PAD': 20, 'group': 39, 'path': 48, 'station': 166},
    {'ARROW': 167, 'COMMA': -207, 'RBRACE': -207, '_NL': -207},
    {'STRING': 168},
    {'NAME': 17, 'path': 169, 'together': 170},
    {'NAME': 17, 'path': 171},
    {'BECAUSE': 172},
    {'ABOVE': -50, 'AT': -50, 'BELOW': -50, 'CIRCUMFLEX': -50, 'COMMA': -50, 'FROM': -50, 'INTO': -50, 'LBRACE': -50, 'MINUS': -50, 'PLUS': -50, 'RBRACE': -50, 'RPAR': -50, 'SLASH': -50, 'STAR': -50, 'TO': -50, 'WITHIN': -50, '_NL': -50},
    {'ABOVE': -51, 'AT': -51, 'BELOW': -51, 'CIRCUMFLEX': -51, 'COMMA': -51, 'FROM': -51, 'INTO': -51, 'LBRACE': -51, 'MINUS': -51, 'PLUS': -51, 'RBRACE': -51, 'RPAR': -51, 'SLASH': -51, 'STAR': -51, 'TO': -51, 'WITHIN': -51, '_NL': -51},
    {'RPAR': 173},
    {'ABOVE': -202, 'AT': -202, 'BELOW': -202, 'CIRCUMFLEX': -202, 'COMMA': -202, 'FROM': -202, 'INTO': -202, 'LBRACE': -202, 'MINUS': -202, 'PLUS': -202, 'RBRACE': -202, 'RPAR': -202, 'SLASH': -202, 'STAR': -202, 'TO': -202, 'WITHIN': -202, '_NL': -202},
    {'ABOVE': -47, 'AT': -47, 'BELOW': -47, 'CIRCUMFLEX': -47, 'COMMA': -47, 'FROM': -47, 'INTO': -47, 'LBRACE': -47, 'MINUS': -47, 'PLUS': -47, 'RBRACE': -47, 'RPAR': -47, 'SLASH': -47, 'STAR': -47, 'TO': -47, 'WITHIN': -47, '_NL': -47},
    {'ABOVE': -48, 'AT': -48, 'BELOW': -48, 'CIRCUMFLEX': -48, 'COMMA': -48, 'FROM': -48, 'INTO': -48, 'LBRACE': -48, 'MINUS': -48, 'PLUS': -48, 'RBRACE': -48, 'RPAR': -48, 'SLASH': -48, 'STAR': -48, 'TO': -48, 'WITHIN': -48, '_NL': -48},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'expr': 174, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'power': 175, 'unary': 70},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'power': 176, 'unary': 70},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'power': 67, 'product': 177, 'unary': 70},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'power': 67, 'product': 178, 'unary': 70},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'power': 179, 'unary': 70},
    {'ALLOW': 1, 'AMPLIFIER': 2, 'CHOICE': 3, 'CONNECTOR': 4, 'COUPLING': 5, 'DESIGN': 6, 'DRIVER': 7, 'EXPECT': 8, 'FIT': 9, 'INCLUDE': 10, 'INPUT': 11, 'KIND': 12, 'LEG': 13, 'LET': 14, 'LIMIT': 15, 'LPAR': 16, 'NAME': 17, 'NETWORK': 18, 'OMIT': 19, 'PAD': 20, 'POSITION': 21, 'POSTS': 22, 'RBRACE': 180, 'SET': 23, 'TESTPOINT': 24, 'USE': 25, 'VARIANT': 26, '_NL': 181, '__body_star_11': 182, 'allow': 29, 'amplifier': 30, 'choice': 31, 'connector': 32, 'coupling': 33, 'design': 34, 'driver': 35, 'entry': 183, 'expect': 37, 'fit': 38, 'group': 39, 'include': 40, 'input': 41, 'leg': 42, 'let': 43, 'limit': 44, 'network': 45, 'omit': 46, 'part': 47, 'path': 48, 'position': 49, 'posts': 50, 'set': 51, 'station': 53, 'testpoint': 54, 'use': 55, 'variant': 56, 'walk': 57},
    {'LBRACE': 118, 'body': 184},
    {'COMMA': -75, 'RBRACE': -75, '_NL': -75},
    {'NAME': 185, 'PIN': 186, 'RBRACE': 187, '_NL': 188, '__pins_star_1': 189, 'pin': 190},
    {'LBRACE': 121, 'THROUGH': 191, 'pins': 192},
    {'NAME': 193},
    {'COMMA': -83, 'RBRACE': -83, '_NL': -83},
    {'NAME': 17, 'path': 194},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 195, 'NUMBER': 64, 'RBRACE': 196, '_NL': 197, '__block_star_12': 198, 'atom': 65, 'expr': 199, 'item': 200, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'COMMA': -89, 'RBRACE': -89, '_NL': -89},
    {'COMMA': -88, 'LBRACE': 126, 'RBRACE': -88, '_NL': -88, 'block': 201},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'expr': 202, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'expr': 203, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'expr': 204, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'expr': 205, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'NAME': 17, 'path': 206},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'expr': 207, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'ABOVE': 129, 'AT': 130, 'BELOW': 131, 'COMMA': -125, 'FROM': 132, 'RBRACE': -125, 'WITHIN': 134, '_NL': -125, 'clause': 208},
    {'ABOVE': -5, 'AT': -5, 'BELOW': -5, 'COMMA': -5, 'FROM': -5, 'RBRACE': -5, 'WITHIN': -5, '_NL': -5},
    {'ABOVE': -145, 'AT': -145, 'BELOW': -145, 'COMMA': -145, 'FROM': -145, 'RBRACE': -145, 'WITHIN': -145, '_NL': -145},
    {'ABOVE': 129, 'AT': 130, 'BELOW': 131, 'COMMA': -124, 'FROM': 132, 'RBRACE': -124, 'WITHIN': 134, '_NL': -124, '__expect_star_8': 209, 'clause': 136},
    {'NAME': 17, 'path': 210},
    {'AND': 211, 'COMMA': -128, 'RBRACE': -128, '_NL': -128},
    {'LIBRARY': 212},
    {'COMMA': -163, 'RBRACE': -163, '_NL': -163},
    {'COMMA': -162, 'LBRACE': 126, 'RBRACE': -162, '_NL': -162, 'block': 213},
    {'NAME': 214},
    {'AND': 215, 'LBRACE': 118, 'body': 216},
    {'COMMA': -150, 'RBRACE': -150, '_NL': -150},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'expr': 217, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'COMMA': -152, 'RBRACE': -152, '_NL': -152},
    {'RPAR': 218, 'VBAR': 151, '_NL': 219, '__group_star_4': 220},
    {'ARROW': -139, 'COMMA': -139, 'RBRACE': -139, 'RPAR': -139, 'VBAR': -139, '_NL': -139},
    {'LPAR': 16, 'NAME': 17, 'PAD': 20, '_NL': 221, 'chain': 222, 'group': 39, 'path': 48, 'station': 86},
    {'RPAR': 223, 'VBAR': 224},
    {'RPAR': 225, 'VBAR': 226, '_NL': 227},
    {'ARROW': 167, 'RPAR': -72, 'VBAR': -72, '_NL': -72},
    {'ABOVE': -25, 'AND': -25, 'ARROW': -25, 'AT': -25, 'BECAUSE': -25, 'BELOW': -25, 'CODE': -25, 'COMMA': -25, 'COMMA_NUMBER': -25, 'DOT': -25, 'EQUAL': -25, 'FROM': -25, 'IN': -25, 'LPAR': -25, 'MINUS': -25, 'NAME': -25, 'NUMBER': -25, 'PLUS': -25, 'RBRACE': -25, 'RPAR': -25, 'VBAR': -25, 'WITHIN': -25, '_NL': -25},
    {'NAME': 228},
    {'NAME': 229},
    {'AND': 211, 'COMMA': -157, 'RBRACE': -157, '_NL': -157},
    {'LBRACE': 118, 'body': 230},
    {'COMMA': -180, 'RBRACE': -180, '_NL': -180},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'expr': 231, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'NAME': 232},
    {'LBRACE': 118, 'body': 233},
    {'COMMA': -206, 'RBRACE': -206, '_NL': -206},
    {'$END': -30, 'ALLOW': -30, 'AMPLIFIER': -30, 'CHOICE': -30, 'CONNECTOR': -30, 'COUPLING': -30, 'DESIGN': -30, 'DRIVER': -30, 'EXPECT': -30, 'FIT': -30, 'INCLUDE': -30, 'INPUT': -30, 'KIND': -30, 'LEG': -30, 'LET': -30, 'LIMIT': -30, 'LPAR': -30, 'NAME': -30, 'NETWORK': -30, 'OMIT': -30, 'PAD': -30, 'POSITION': -30, 'POSTS': -30, 'SET': -30, 'TESTPOINT': -30, 'USE': -30, 'VARIANT': -30},
    {'ARROW': -33, 'COMMA': -33, 'RBRACE': -33, 'RPAR': -33, 'VBAR': -33, '_NL': -33},
    {'LPAR': 16, 'NAME': 17, 'PAD': 20, 'group': 39, 'path': 48, 'station': 234},
    {'COMMA': -44, 'RBRACE': -44, '_NL': -44},
    {'AND': -200, 'BECAUSE': -200, 'PLUS': 235, '__together_star_10': 236},
    {'AND': 237, 'BECAUSE': -141, '__in_variants_star_9': 238},
    {'BECAUSE': 239, 'IN': 103, 'in_variants': 240},
    {'STRING': 241},
    {'ABOVE': -55, 'AT': -55, 'BELOW': -55, 'CIRCUMFLEX': -55, 'COMMA': -55, 'FROM': -55, 'INTO': -55, 'LBRACE': -55, 'MINUS': -55, 'PLUS': -55, 'RBRACE': -55, 'RPAR': -55, 'SLASH': -55, 'STAR': -55, 'TO': -55, 'WITHIN': -55, '_NL': -55},
    {'COMMA': -46, 'LBRACE': 126, 'RBRACE': -46, '_NL': -46, 'block': 242},
    {'ABOVE': -186, 'AT': -186, 'BELOW': -186, 'COMMA': -186, 'FROM': -186, 'INTO': -186, 'LBRACE': -186, 'MINUS': -186, 'PLUS': -186, 'RBRACE': -186, 'RPAR': -186, 'SLASH': -186, 'STAR': -186, 'TO': -186, 'WITHIN': -186, '_NL': -186},
    {'ABOVE': -185, 'AT': -185, 'BELOW': -185, 'COMMA': -185, 'FROM': -185, 'INTO': -185, 'LBRACE': -185, 'MINUS': -185, 'PLUS': -185, 'RBRACE': -185, 'RPAR': -185, 'SLASH': -185, 'STAR': -185, 'TO': -185, 'WITHIN': -185, '_NL': -185},
    {'ABOVE': -197, 'AT': -197, 'BELOW': -197, 'COMMA': -197, 'FROM': -197, 'INTO': -197, 'LBRACE': -197, 'MINUS': -197, 'PLUS': -197, 'RBRACE': -197, 'RPAR': -197, 'SLASH': 113, 'STAR': 114, 'TO': -197, 'WITHIN': -197, '_NL': -197},
    {'ABOVE': -196, 'AT': -196, 'BELOW': -196, 'COMMA': -196, 'FROM': -196, 'INTO': -196, 'LBRACE': -196, 'MINUS': -196, 'PLUS': -196, 'RBRACE': -196, 'RPAR': -196, 'SLASH': 113, 'STAR': 114, 'TO': -196, 'WITHIN': -196, '_NL': -196},
    {'ABOVE': -183, 'AT': -183, 'BELOW': -183, 'COMMA': -183, 'FROM': -183, 'INTO': -183, 'LBRACE': -183, 'MINUS': -183, 'PLUS': -183, 'RBRACE': -183, 'RPAR': -183, 'SLASH': -183, 'STAR': -183, 'TO': -183, 'WITHIN': -183, '_NL': -183},
    {'COMMA': -71, 'RBRACE': -71, '_NL': -71},
    {'ALLOW': 1, 'AMPLIFIER': 2, 'CHOICE': 3, 'CONNECTOR': 4, 'COUPLING': 5, 'DESIGN': 6, 'DRIVER': 7, 'EXPECT': 8, 'FIT': 9, 'INCLUDE': 10, 'INPUT': 11, 'KIND': 12, 'LEG': 13, 'LET': 14, 'LIMIT': 15, 'LPAR': 16, 'NAME': 17, 'NETWORK': 18, 'OMIT': 19, 'PAD': 20, 'POSITION': 21, 'POSTS': 22, 'RBRACE': 243, 'SET': 23, 'TESTPOINT': 24, 'USE': 25, 'VARIANT': 26, '__body_star_11': 244, 'allow': 29, 'amplifier': 30, 'choice': 31, 'connector': 32, 'coupling': 33, 'design': 34, 'driver': 35, 'entry': 245, 'expect': 37, 'fit': 38, 'group': 39, 'include': 40, 'input': 41, 'leg': 42, 'let': 43, 'limit': 44, 'network': 45, 'omit': 46, 'part': 47, 'path': 48, 'position': 49, 'posts': 50, 'set': 51, 'station': 53, 'testpoint': 54, 'use': 55, 'variant': 56, 'walk': 57},
    {'ALLOW': 1, 'AMPLIFIER': 2, 'CHOICE': 3, 'CONNECTOR': 4, 'COUPLING': 5, 'DESIGN': 6, 'DRIVER': 7, 'EXPECT': 8, 'FIT': 9, 'INCLUDE': 10, 'INPUT': 11, 'KIND': 12, 'LEG': 13, 'LET': 14, 'LIMIT': 15, 'LPAR': 16, 'NAME': 17, 'NETWORK': 18, 'OMIT': 19, 'PAD': 20, 'POSITION': 21, 'POSTS': 22, 'RBRACE': 246, 'SET': 23, 'TESTPOINT': 24, 'USE': 25, 'VARIANT': 26, 'allow': 29, 'amplifier': 30, 'choice': 31, 'connector': 32, 'coupling': 33, 'design': 34, 'driver': 35, 'entry': 247, 'expect': 37, 'fit': 38, 'group': 39, 'include': 40, 'input': 41, 'leg': 42, 'let': 43, 'limit': 44, 'network': 45, 'omit': 46, 'part': 47, 'path': 48, 'position': 49, 'posts': 50, 'set': 51, 'station': 53, 'testpoint': 54, 'use': 55, 'variant': 56, 'walk': 57},
    {'COMMA': 248, 'RBRACE': 249, '_NL': 250, '_sep': 251},
    {'COMMA': -74, 'RBRACE': -74, '_NL': -74},
    {'PAD': 252, 'UNUSED': 253},
    {'PAD': 254, 'UNUSED': 255},
    {'COMMA': -178, 'RBRACE': -178, '_NL': -178},
    {'NAME': 185, 'PIN': 186, 'RBRACE': 256, '__pins_star_1': 257, 'pin': 258},
    {'NAME': 185, 'PIN': 186, 'RBRACE': 259, 'pin': 260},
    {'COMMA': 261, 'RBRACE': 262, '_NL': 263, '_pin_sep': 264},
    {'NAME': 265},
    {'COMMA': -81, 'RBRACE': -81, '_NL': -81},
    {'COMMA': -84, 'RBRACE': -84, '_NL': -84},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'expr': 266, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'CIRCUMFLEX': -54, 'CODE': 59, 'COMMA': -54, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'PLUS': -54, 'RBRACE': -54, 'SLASH': -54, 'STAR': -54, 'STRING': 267, '_NL': -54, 'atom': 65, 'expr': 268, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'COMMA': -63, 'RBRACE': -63, '_NL': -63},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 195, 'NUMBER': 64, 'RBRACE': 269, '__block_star_12': 270, 'atom': 65, 'expr': 199, 'item': 271, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 195, 'NUMBER': 64, 'RBRACE': 272, 'atom': 65, 'expr': 199, 'item': 273, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'COMMA': -146, 'RBRACE': -146, '_NL': -146},
    {'COMMA': 248, 'RBRACE': 274, '_NL': 250, '_sep': 275},
    {'COMMA': -87, 'RBRACE': -87, '_NL': -87},
    {'ABOVE': -78, 'AT': -78, 'BELOW': -78, 'COMMA': -78, 'FROM': -78, 'RBRACE': -78, 'WITHIN': -78, '_NL': -78},
    {'ABOVE': -76, 'AT': -76, 'BELOW': -76, 'COMMA': -76, 'FROM': -76, 'RBRACE': -76, 'WITHIN': -76, '_NL': -76},
    {'ABOVE': -79, 'AT': -79, 'BELOW': -79, 'COMMA': -79, 'FROM': -79, 'RBRACE': -79, 'WITHIN': -79, '_NL': -79},
    {'TO': 276},
    {'ABOVE': 129, 'AND': 139, 'AT': 130, 'BELOW': 131, 'CODE': 59, 'COMMA': -122, 'COMMA_NUMBER': 60, 'FROM': 132, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'RBRACE': -122, 'WITHIN': 134, '_NL': -122, '__expect_star_8': 277, '__omit_star_7': 278, 'atom': 65, 'clause': 136, 'expr': 137, 'is': 279, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'ABOVE': -77, 'AT': -77, 'BELOW': -77, 'COMMA': -77, 'FROM': -77, 'RBRACE': -77, 'WITHIN': -77, '_NL': -77},
    {'ABOVE': -6, 'AT': -6, 'BELOW': -6, 'COMMA': -6, 'FROM': -6, 'RBRACE': -6, 'WITHIN': -6, '_NL': -6},
    {'ABOVE': 129, 'AT': 130, 'BELOW': 131, 'COMMA': -123, 'FROM': 132, 'RBRACE': -123, 'WITHIN': 134, '_NL': -123, 'clause': 208},
    {'ABOVE': -23, 'AND': -23, 'AT': -23, 'BELOW': -23, 'CODE': -23, 'COMMA': -23, 'COMMA_NUMBER': -23, 'FROM': -23, 'LPAR': -23, 'MINUS': -23, 'NAME': -23, 'NUMBER': -23, 'RBRACE': -23, 'WITHIN': -23, '_NL': -23},
    {'NAME': 17, 'path': 280},
    {'COMMA': -142, 'RBRACE': -142, '_NL': -142},
    {'COMMA': -161, 'RBRACE': -161, '_NL': -161},
    {'AND': -19, 'LBRACE': -19},
    {'NAME': 281},
    {'COMMA': -149, 'RBRACE': -149, '_NL': -149},
    {'COMMA': -151, 'RBRACE': -151, '_NL': -151},
    {'ARROW': -135, 'COMMA': -135, 'RBRACE': -135, 'RPAR': -135, 'VBAR': -135, '_NL': -135},
    {'RPAR': 282, 'VBAR': 224},
    {'RPAR': 283, 'VBAR': 226, '_NL': 284},
    {'LPAR': 16, 'NAME': 17, 'PAD': 20, 'chain': 285, 'group': 39, 'path': 48, 'station': 86},
    {'RPAR': -12, 'VBAR': -12, '_NL': -12},
    {'ARROW': -138, 'COMMA': -138, 'RBRACE': -138, 'RPAR': -138, 'VBAR': -138, '_NL': -138},
    {'LPAR': 16, 'NAME': 17, 'PAD': 20, '_NL': 286, 'chain': 287, 'group': 39, 'path': 48, 'station': 86},
    {'ARROW': -137, 'COMMA': -137, 'RBRACE': -137, 'RPAR': -137, 'VBAR': -137, '_NL': -137},
    {'LPAR': 16, 'NAME': 17, 'PAD': 20, '_NL': 288, 'chain': 289, 'group': 39, 'path': 48, 'station': 86},
    {'RPAR': 290, 'VBAR': 291},
    {'ABOVE': -26, 'AND': -26, 'ARROW': -26, 'AT': -26, 'BECAUSE': -26, 'BELOW': -26, 'CODE': -26, 'COMMA': -26, 'COMMA_NUMBER': -26, 'DOT': -26, 'EQUAL': -26, 'FROM': -26, 'IN': -26, 'LPAR': -26, 'MINUS': -26, 'NAME': -26, 'NUMBER': -26, 'PLUS': -26, 'RBRACE': -26, 'RPAR': -26, 'VBAR': -26, 'WITHIN': -26, '_NL': -26},
    {'COMMA': 292, 'RPAR': 293, '__network_star_5': 294},
    {'COMMA': -179, 'RBRACE': -179, '_NL': -179},
    {'COMMA': -187, 'RBRACE': -187, '_NL': -187},
    {'COMMA': -204, 'LBRACE': 126, 'RBRACE': -204, '_NL': -204, 'block': 295},
    {'COMMA': -205, 'RBRACE': -205, '_NL': -205},
    {'ARROW': -34, 'COMMA': -34, 'RBRACE': -34, 'RPAR': -34, 'VBAR': -34, '_NL': -34},
    {'NAME': 17, 'path': 296},
    {'AND': -199, 'BECAUSE': -199, 'PLUS': 297},
    {'NAME': 17, 'path': 169, 'together': 298},
    {'AND': 299, 'BECAUSE': -140},
    {'STRING': 300},
    {'BECAUSE': 301},
    {'COMMA': -43, 'RBRACE': -43, '_NL': -43},
    {'COMMA': -45, 'RBRACE': -45, '_NL': -45},
    {'COMMA': -67, 'RBRACE': -67, '_NL': -67},
    {'ALLOW': 1, 'AMPLIFIER': 2, 'CHOICE': 3, 'CONNECTOR': 4, 'COUPLING': 5, 'DESIGN': 6, 'DRIVER': 7, 'EXPECT': 8, 'FIT': 9, 'INCLUDE': 10, 'INPUT': 11, 'KIND': 12, 'LEG': 13, 'LET': 14, 'LIMIT': 15, 'LPAR': 16, 'NAME': 17, 'NETWORK': 18, 'OMIT': 19, 'PAD': 20, 'POSITION': 21, 'POSTS': 22, 'RBRACE': 302, 'SET': 23, 'TESTPOINT': 24, 'USE': 25, 'VARIANT': 26, 'allow': 29, 'amplifier': 30, 'choice': 31, 'connector': 32, 'coupling': 33, 'design': 34, 'driver': 35, 'entry': 303, 'expect': 37, 'fit': 38, 'group': 39, 'include': 40, 'input': 41, 'leg': 42, 'let': 43, 'limit': 44, 'network': 45, 'omit': 46, 'part': 47, 'path': 48, 'position': 49, 'posts': 50, 'set': 51, 'station': 53, 'testpoint': 54, 'use': 55, 'variant': 56, 'walk': 57},
    {'COMMA': 248, 'RBRACE': 304, '_NL': 250, '_sep': 251},
    {'COMMA': -69, 'RBRACE': -69, '_NL': -69},
    {'COMMA': 248, 'RBRACE': 305, '_NL': 250, '_sep': 306},
    {'ALLOW': -39, 'AMPLIFIER': -39, 'CHOICE': -39, 'CODE': -39, 'COMMA_NUMBER': -39, 'CONNECTOR': -39, 'COUPLING': -39, 'DESIGN': -39, 'DRIVER': -39, 'EXPECT': -39, 'FIT': -39, 'INCLUDE': -39, 'INPUT': -39, 'KIND': -39, 'LEG': -39, 'LET': -39, 'LIMIT': -39, 'LPAR': -39, 'MINUS': -39, 'NAME': -39, 'NETWORK': -39, 'NUMBER': -39, 'OMIT': -39, 'PAD': -39, 'POSITION': -39, 'POSTS': -39, 'RBRACE': -39, 'SET': -39, 'TESTPOINT': -39, 'USE': -39, 'VARIANT': -39, '_NL': 307},
    {'COMMA': -70, 'RBRACE': -70, '_NL': -70},
    {'ALLOW': -40, 'AMPLIFIER': -40, 'CHOICE': -40, 'CODE': -40, 'COMMA_NUMBER': -40, 'CONNECTOR': -40, 'COUPLING': -40, 'DESIGN': -40, 'DRIVER': -40, 'EXPECT': -40, 'FIT': -40, 'INCLUDE': -40, 'INPUT': -40, 'KIND': -40, 'LEG': -40, 'LET': -40, 'LIMIT': -40, 'LPAR': -40, 'MINUS': -40, 'NAME': -40, 'NETWORK': -40, 'NUMBER': -40, 'OMIT': -40, 'PAD': -40, 'POSITION': -40, 'POSTS': -40, 'RBRACE': -40, 'SET': -40, 'TESTPOINT': -40, 'USE': -40, 'VARIANT': -40},
    {'ALLOW': -3, 'AMPLIFIER': -3, 'CHOICE': -3, 'CONNECTOR': -3, 'COUPLING': -3, 'DESIGN': -3, 'DRIVER': -3, 'EXPECT': -3, 'FIT': -3, 'INCLUDE': -3, 'INPUT': -3, 'KIND': -3, 'LEG': -3, 'LET': -3, 'LIMIT': -3, 'LPAR': -3, 'NAME': -3, 'NETWORK': -3, 'OMIT': -3, 'PAD': -3, 'POSITION': -3, 'POSTS': -3, 'RBRACE': -3, 'SET': -3, 'TESTPOINT': -3, 'USE': -3, 'VARIANT': -3},
    {'COMMA': -169, 'RBRACE': -169, '_NL': -169},
    {'COMMA': -170, 'RBRACE': -170, '_NL': -170},
    {'COMMA': -167, 'RBRACE': -167, '_NL': -167},
    {'COMMA': -168, 'RBRACE': -168, '_NL': -168},
    {'COMMA': -174, 'RBRACE': -174, '_NL': -174},
    {'NAME': 185, 'PIN': 186, 'RBRACE': 308, 'pin': 309},
    {'COMMA': 261, 'RBRACE': 310, '_NL': 263, '_pin_sep': 264},
    {'COMMA': -176, 'RBRACE': -176, '_NL': -176},
    {'COMMA': 261, 'RBRACE': 311, '_NL': 263, '_pin_sep': 312},
    {'NAME': -36, 'PIN': -36, 'RBRACE': -36, '_NL': 313},
    {'COMMA': -177, 'RBRACE': -177, '_NL': -177},
    {'NAME': -37, 'PIN': -37, 'RBRACE': -37},
    {'NAME': -27, 'PIN': -27, 'RBRACE': -27},
    {'COMMA': -82, 'RBRACE': -82, '_NL': -82},
    {'COMMA': -85, 'RBRACE': -85, '_NL': -85},
    {'COMMA': -148, 'RBRACE': -148, '_NL': -148},
    {'COMMA': -147, 'RBRACE': -147, '_NL': -147},
    {'COMMA': -59, 'RBRACE': -59, '_NL': -59},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 195, 'NUMBER': 64, 'RBRACE': 314, 'atom': 65, 'expr': 199, 'item': 315, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'COMMA': 248, 'RBRACE': 316, '_NL': 250, '_sep': 275},
    {'COMMA': -61, 'RBRACE': -61, '_NL': -61},
    {'COMMA': 248, 'RBRACE': 317, '_NL': 250, '_sep': 318},
    {'COMMA': -62, 'RBRACE': -62, '_NL': -62},
    {'CODE': -1, 'COMMA_NUMBER': -1, 'LPAR': -1, 'MINUS': -1, 'NAME': -1, 'NUMBER': -1, 'RBRACE': -1},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'expr': 319, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'ABOVE': 129, 'AT': 130, 'BELOW': 131, 'COMMA': -121, 'FROM': 132, 'RBRACE': -121, 'WITHIN': 134, '_NL': -121, 'clause': 208},
    {'ABOVE': 129, 'AND': 211, 'AT': 130, 'BELOW': 131, 'CODE': 59, 'COMMA': -118, 'COMMA_NUMBER': 60, 'FROM': 132, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'RBRACE': -118, 'WITHIN': 134, '_NL': -118, '__expect_star_8': 320, 'atom': 65, 'clause': 136, 'expr': 137, 'is': 321, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'ABOVE': 129, 'AT': 130, 'BELOW': 131, 'COMMA': -120, 'FROM': 132, 'RBRACE': -120, 'WITHIN': 134, '_NL': -120, '__expect_star_8': 322, 'clause': 136},
    {'ABOVE': -24, 'AND': -24, 'AT': -24, 'BELOW': -24, 'CODE': -24, 'COMMA': -24, 'COMMA_NUMBER': -24, 'FROM': -24, 'LPAR': -24, 'MINUS': -24, 'NAME': -24, 'NUMBER': -24, 'RBRACE': -24, 'WITHIN': -24, '_NL': -24},
    {'AND': -20, 'LBRACE': -20},
    {'ARROW': -134, 'COMMA': -134, 'RBRACE': -134, 'RPAR': -134, 'VBAR': -134, '_NL': -134},
    {'ARROW': -133, 'COMMA': -133, 'RBRACE': -133, 'RPAR': -133, 'VBAR': -133, '_NL': -133},
    {'RPAR': 323, 'VBAR': 291},
    {'RPAR': -11, 'VBAR': -11, '_NL': -11},
    {'LPAR': 16, 'NAME': 17, 'PAD': 20, 'chain': 324, 'group': 39, 'path': 48, 'station': 86},
    {'RPAR': -10, 'VBAR': -10, '_NL': -10},
    {'LPAR': 16, 'NAME': 17, 'PAD': 20, 'chain': 325, 'group': 39, 'path': 48, 'station': 86},
    {'RPAR': -16, 'VBAR': -16, '_NL': -16},
    {'ARROW': -136, 'COMMA': -136, 'RBRACE': -136, 'RPAR': -136, 'VBAR': -136, '_NL': -136},
    {'LPAR': 16, 'NAME': 17, 'PAD': 20, '_NL': 326, 'chain': 327, 'group': 39, 'path': 48, 'station': 86},
    {'NAME': 328},
    {'GIVEN': 329, 'LBRACE': 118, 'body': 330, 'given': 331},
    {'COMMA': 332, 'RPAR': 333},
    {'COMMA': -203, 'RBRACE': -203, '_NL': -203},
    {'AND': -31, 'BECAUSE': -31, 'PLUS': -31},
    {'NAME': 17, 'path': 334},
    {'AND': -17, 'BECAUSE': -17},
    {'NAME': 17, 'path': 169, 'together': 335},
    {'COMMA': -42, 'RBRACE': -42, '_NL': -42},
    {'STRING': 336},
    {'COMMA': -65, 'RBRACE': -65, '_NL': -65},
    {'COMMA': 248, 'RBRACE': 337, '_NL': 250, '_sep': 306},
    {'COMMA': -66, 'RBRACE': -66, '_NL': -66},
    {'COMMA': -68, 'RBRACE': -68, '_NL': -68},
    {'ALLOW': -4, 'AMPLIFIER': -4, 'CHOICE': -4, 'CONNECTOR': -4, 'COUPLING': -4, 'DESIGN': -4, 'DRIVER': -4, 'EXPECT': -4, 'FIT': -4, 'INCLUDE': -4, 'INPUT': -4, 'KIND': -4, 'LEG': -4, 'LET': -4, 'LIMIT': -4, 'LPAR': -4, 'NAME': -4, 'NETWORK': -4, 'OMIT': -4, 'PAD': -4, 'POSITION': -4, 'POSTS': -4, 'RBRACE': -4, 'SET': -4, 'TESTPOINT': -4, 'USE': -4, 'VARIANT': -4},
    {'ALLOW': -38, 'AMPLIFIER': -38, 'CHOICE': -38, 'CODE': -38, 'COMMA_NUMBER': -38, 'CONNECTOR': -38, 'COUPLING': -38, 'DESIGN': -38, 'DRIVER': -38, 'EXPECT': -38, 'FIT': -38, 'INCLUDE': -38, 'INPUT': -38, 'KIND': -38, 'LEG': -38, 'LET': -38, 'LIMIT': -38, 'LPAR': -38, 'MINUS': -38, 'NAME': -38, 'NETWORK': -38, 'NUMBER': -38, 'OMIT': -38, 'PAD': -38, 'POSITION': -38, 'POSTS': -38, 'RBRACE': -38, 'SET': -38, 'TESTPOINT': -38, 'USE': -38, 'VARIANT': -38},
    {'COMMA': -172, 'RBRACE': -172, '_NL': -172},
    {'COMMA': 261, 'RBRACE': 338, '_NL': 263, '_pin_sep': 312},
    {'COMMA': -173, 'RBRACE': -173, '_NL': -173},
    {'COMMA': -175, 'RBRACE': -175, '_NL': -175},
    {'NAME': -28, 'PIN': -28, 'RBRACE': -28},
    {'NAME': -35, 'PIN': -35, 'RBRACE': -35},
    {'COMMA': -57, 'RBRACE': -57, '_NL': -57},
    {'COMMA': 248, 'RBRACE': 339, '_NL': 250, '_sep': 318},
    {'COMMA': -58, 'RBRACE': -58, '_NL': -58},
    {'COMMA': -60, 'RBRACE': -60, '_NL': -60},
    {'CODE': -2, 'COMMA_NUMBER': -2, 'LPAR': -2, 'MINUS': -2, 'NAME': -2, 'NUMBER': -2, 'RBRACE': -2},
    {'ABOVE': -80, 'AT': -80, 'BELOW': -80, 'COMMA': -80, 'FROM': -80, 'RBRACE': -80, 'WITHIN': -80, '_NL': -80},
    {'ABOVE': 129, 'AT': 130, 'BELOW': 131, 'COMMA': -117, 'FROM': 132, 'RBRACE': -117, 'WITHIN': 134, '_NL': -117, 'clause': 208},
    {'ABOVE': 129, 'AT': 130, 'BELOW': 131, 'COMMA': -116, 'FROM': 132, 'RBRACE': -116, 'WITHIN': 134, '_NL': -116, '__expect_star_8': 340, 'clause': 136},
    {'ABOVE': 129, 'AT': 130, 'BELOW': 131, 'COMMA': -119, 'FROM': 132, 'RBRACE': -119, 'WITHIN': 134, '_NL': -119, 'clause': 208},
    {'ARROW': -132, 'COMMA': -132, 'RBRACE': -132, 'RPAR': -132, 'VBAR': -132, '_NL': -132},
    {'RPAR': -9, 'VBAR': -9, '_NL': -9},
    {'RPAR': -15, 'VBAR': -15, '_NL': -15},
    {'LPAR': 16, 'NAME': 17, 'PAD': 20, 'chain': 341, 'group': 39, 'path': 48, 'station': 86},
    {'RPAR': -14, 'VBAR': -14, '_NL': -14},
    {'COMMA': -21, 'RPAR': -21},
    {'NAME': 342, 'param': 343},
    {'COMMA': -156, 'RBRACE': -156, '_NL': -156},
    {'LBRACE': 118, 'body': 344},
    {'NAME': 345},
    {'GIVEN': 329, 'LBRACE': 118, 'body': 346, 'given': 347},
    {'AND': -32, 'BECAUSE': -32, 'PLUS': -32},
    {'AND': -18, 'BECAUSE': -18},
    {'COMMA': -41, 'RBRACE': -41, '_NL': -41},
    {'COMMA': -64, 'RBRACE': -64, '_NL': -64},
    {'COMMA': -171, 'RBRACE': -171, '_NL': -171},
    {'COMMA': -56, 'RBRACE': -56, '_NL': -56},
    {'ABOVE': 129, 'AT': 130, 'BELOW': 131, 'COMMA': -115, 'FROM': 132, 'RBRACE': -115, 'WITHIN': 134, '_NL': -115, 'clause': 208},
    {'RPAR': -13, 'VBAR': -13, '_NL': -13},
    {'COMMA': -160, 'EQUAL': 348, 'LBRACE': -160},
    {'COMMA': 349, 'LBRACE': -131, '__given_star_6': 350},
    {'COMMA': -155, 'RBRACE': -155, '_NL': -155},
    {'COMMA': -22, 'RPAR': -22},
    {'COMMA': -154, 'RBRACE': -154, '_NL': -154},
    {'LBRACE': 118, 'body': 351},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'expr': 352, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'NAME': 342, 'param': 353},
    {'COMMA': 354, 'LBRACE': -130},
    {'COMMA': -153, 'RBRACE': -153, '_NL': -153},
    {'COMMA': -159, 'LBRACE': -159},
    {'COMMA': -7, 'LBRACE': -7},
    {'NAME': 342, 'param': 355},
    {'COMMA': -8, 'LBRACE': -8},
)
