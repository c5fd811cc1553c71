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
    ('__block_star_10', None, 2, (0, 1), False),  # __block_star_10: item _sep
    ('__block_star_10', None, 3, (0, 1, 2), False),  # __block_star_10: __block_star_10 item _sep
    ('__body_star_9', None, 2, (0, 1), False),  # __body_star_9: entry _sep
    ('__body_star_9', None, 3, (0, 1, 2), False),  # __body_star_9: __body_star_9 entry _sep
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
    ('__leg_star_2', None, 2, (1,), False),  # __leg_star_2: AND NAME
    ('__leg_star_2', None, 3, (0, 2), False),  # __leg_star_2: __leg_star_2 AND NAME
    ('__network_star_5', None, 2, (1,), False),  # __network_star_5: COMMA NAME
    ('__network_star_5', None, 3, (0, 2), False),  # __network_star_5: __network_star_5 COMMA NAME
    ('__omit_star_7', None, 2, (1,), False),  # __omit_star_7: AND path
    ('__omit_star_7', None, 3, (0, 2), False),  # __omit_star_7: __omit_star_7 AND path
    ('__path_star_11', None, 2, (1,), False),  # __path_star_11: DOT NAME
    ('__path_star_11', None, 3, (0, 2), False),  # __path_star_11: __path_star_11 DOT NAME
    ('__pins_star_1', None, 2, (0, 1), False),  # __pins_star_1: pin _pin_sep
    ('__pins_star_1', None, 3, (0, 1, 2), False),  # __pins_star_1: __pins_star_1 pin _pin_sep
    ('__start_star_0', None, 2, (0,), False),  # __start_star_0: entry _NL
    ('__start_star_0', None, 3, (0, 1), False),  # __start_star_0: __start_star_0 entry _NL
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
    ('block', 'block', 5, (2, 3), False),  # block: LBRACE _NL __block_star_10 item RBRACE
    ('block', 'block', 4, (2,), False),  # block: LBRACE _NL __block_star_10 RBRACE
    ('block', 'block', 4, (2,), False),  # block: LBRACE _NL item RBRACE
    ('block', 'block', 3, (), False),  # block: LBRACE _NL RBRACE
    ('block', 'block', 4, (1, 2), False),  # block: LBRACE __block_star_10 item RBRACE
    ('block', 'block', 3, (1,), False),  # block: LBRACE __block_star_10 RBRACE
    ('block', 'block', 3, (1,), False),  # block: LBRACE item RBRACE
    ('block', 'block', 2, (), False),  # block: LBRACE RBRACE
    ('body', 'body', 5, (2, 3), False),  # body: LBRACE _NL __body_star_9 entry RBRACE
    ('body', 'body', 4, (2,), False),  # body: LBRACE _NL __body_star_9 RBRACE
    ('body', 'body', 4, (2,), False),  # body: LBRACE _NL entry RBRACE
    ('body', 'body', 3, (), False),  # body: LBRACE _NL RBRACE
    ('body', 'body', 4, (1, 2), False),  # body: LBRACE __body_star_9 entry RBRACE
    ('body', 'body', 3, (1,), False),  # body: LBRACE __body_star_9 RBRACE
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
    ('in_variants', 'in_variants', 3, (1, 2), False),  # in_variants: IN path __omit_star_7
    ('in_variants', 'in_variants', 2, (1,), False),  # in_variants: IN path
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
    ('path', 'path', 2, (0, 1), False),  # path: NAME __path_star_11
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
    {'$END': -187, 'ALLOW': 1, 'AMPLIFIER': 2, 'CHOICE': 3, 'CONNECTOR': 4, 'COUPLING': 5, 'DESIGN': 6, 'DRIVER': 7, 'EXPECT': 8, 'FIT': 9, 'INCLUDE': 10, 'INPUT': 11, 'KIND': 12, 'LEG': 13, 'LET': 14, 'LIMIT': 15, 'LPAR': 16, 'NAME': 17, 'NETWORK': 18, 'OMIT': 19, 'PAD': 20, 'POSITION': 21, 'POSTS': 22, 'SET': 23, 'TESTPOINT': 24, 'USE': 25, 'VARIANT': 26, '_NL': 27, '__start_star_0': 28, 'allow': 29, 'amplifier': 30, 'choice': 31, 'connector': 32, 'coupling': 33, 'design': 34, 'driver': 35, 'entry': 36, 'expect': 37, 'fit': 38, 'group': 39, 'include': 40, 'input': 41, 'leg': 42, 'let': 43, 'limit': 44, 'network': 45, 'omit': 46, 'part': 47, 'path': 48, 'position': 49, 'posts': 50, 'set': 51, 'start': 52, 'station': 53, 'testpoint': 54, 'use': 55, 'variant': 56, 'walk': 57},
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
    {'ABOVE': -162, 'AND': -162, 'ARROW': -162, 'AT': -162, 'BECAUSE': -162, 'BELOW': -162, 'CODE': -162, 'COMMA': -162, 'COMMA_NUMBER': -162, 'DOT': 87, 'EQUAL': -162, 'FROM': -162, 'IN': -162, 'LPAR': -162, 'MINUS': -162, 'NAME': -162, 'NUMBER': -162, 'RBRACE': -162, 'RPAR': -162, 'VBAR': -162, 'WITHIN': -162, '_NL': -162, '__path_star_11': 88},
    {'NAME': 89},
    {'NAME': 17, 'path': 90},
    {'ARROW': -188, 'COMMA': -188, 'RBRACE': -188, 'RPAR': -188, 'VBAR': -188, '_NL': -188},
    {'NAME': 91},
    {'NAME': 92},
    {'NAME': 17, 'path': 93},
    {'NAME': 94},
    {'NAME': 95},
    {'NAME': 96},
    {'$END': -185, 'ALLOW': 1, 'AMPLIFIER': 2, 'CHOICE': 3, 'CONNECTOR': 4, 'COUPLING': 5, 'DESIGN': 6, 'DRIVER': 7, 'EXPECT': 8, 'FIT': 9, 'INCLUDE': 10, 'INPUT': 11, 'KIND': 12, 'LEG': 13, 'LET': 14, 'LIMIT': 15, 'LPAR': 16, 'NAME': 17, 'NETWORK': 18, 'OMIT': 19, 'PAD': 20, 'POSITION': 21, 'POSTS': 22, 'SET': 23, 'TESTPOINT': 24, 'USE': 25, 'VARIANT': 26, '__start_star_0': 97, 'allow': 29, 'amplifier': 30, 'choice': 31, 'connector': 32, 'coupling': 33, 'design': 34, 'driver': 35, 'entry': 36, 'expect': 37, 'fit': 38, 'group': 39, 'include': 40, 'input': 41, 'leg': 42, 'let': 43, 'limit': 44, 'network': 45, 'omit': 46, 'part': 47, 'path': 48, 'position': 49, 'posts': 50, 'set': 51, 'station': 53, 'testpoint': 54, 'use': 55, 'variant': 56, 'walk': 57},
    {'$END': -186, 'ALLOW': 1, 'AMPLIFIER': 2, 'CHOICE': 3, 'CONNECTOR': 4, 'COUPLING': 5, 'DESIGN': 6, 'DRIVER': 7, 'EXPECT': 8, 'FIT': 9, 'INCLUDE': 10, 'INPUT': 11, 'KIND': 12, 'LEG': 13, 'LET': 14, 'LIMIT': 15, 'LPAR': 16, 'NAME': 17, 'NETWORK': 18, 'OMIT': 19, 'PAD': 20, 'POSITION': 21, 'POSTS': 22, 'SET': 23, 'TESTPOINT': 24, 'USE': 25, 'VARIANT': 26, 'allow': 29, 'amplifier': 30, 'choice': 31, 'connector': 32, 'coupling': 33, 'design': 34, 'driver': 35, 'entry': 98, 'expect': 37, 'fit': 38, 'group': 39, 'include': 40, 'input': 41, 'leg': 42, 'let': 43, 'limit': 44, 'network': 45, 'omit': 46, 'part': 47, 'path': 48, 'position': 49, 'posts': 50, 'set': 51, 'station': 53, 'testpoint': 54, 'use': 55, 'variant': 56, 'walk': 57},
    {'COMMA': -109, 'RBRACE': -109, '_NL': -109},
    {'COMMA': -88, 'RBRACE': -88, '_NL': -88},
    {'COMMA': -105, 'RBRACE': -105, '_NL': -105},
    {'COMMA': -91, 'RBRACE': -91, '_NL': -91},
    {'COMMA': -94, 'RBRACE': -94, '_NL': -94},
    {'COMMA': -87, 'RBRACE': -87, '_NL': -87},
    {'COMMA': -92, 'RBRACE': -92, '_NL': -92},
    {'_NL': 99},
    {'COMMA': -108, 'RBRACE': -108, '_NL': -108},
    {'COMMA': -102, 'RBRACE': -102, '_NL': -102},
    {'ARROW': -190, 'COMMA': -190, 'RBRACE': -190, 'RPAR': -190, 'VBAR': -190, '_NL': -190},
    {'COMMA': -107, 'RBRACE': -107, '_NL': -107},
    {'COMMA': -89, 'RBRACE': -89, '_NL': -89},
    {'COMMA': -98, 'RBRACE': -98, '_NL': -98},
    {'COMMA': -95, 'RBRACE': -95, '_NL': -95},
    {'COMMA': -110, 'RBRACE': -110, '_NL': -110},
    {'COMMA': -96, 'RBRACE': -96, '_NL': -96},
    {'COMMA': -101, 'RBRACE': -101, '_NL': -101},
    {'COMMA': -93, 'RBRACE': -93, '_NL': -93},
    {'ARROW': -189, 'COMMA': -189, 'RBRACE': -189, 'RPAR': -189, 'VBAR': -189, '_NL': -189},
    {'COMMA': -106, 'RBRACE': -106, '_NL': -106},
    {'COMMA': -90, 'RBRACE': -90, '_NL': -90},
    {'COMMA': -103, 'RBRACE': -103, '_NL': -103},
    {},
    {'ARROW': 100, 'COMMA': -202, 'RBRACE': -202, '_NL': -202, '__walk_star_3': 101},
    {'COMMA': -100, 'RBRACE': -100, '_NL': -100},
    {'COMMA': -97, 'RBRACE': -97, '_NL': -97},
    {'COMMA': -104, 'RBRACE': -104, '_NL': -104},
    {'COMMA': -99, 'RBRACE': -99, '_NL': -99},
    {'BECAUSE': 102, 'IN': 103, 'ON': 104, 'in_variants': 105},
    {'ABOVE': -49, 'AT': -49, 'BELOW': -49, 'CIRCUMFLEX': -49, 'COMMA': -49, 'FROM': -49, 'INTO': -49, 'LBRACE': -49, 'MINUS': -49, 'PLUS': -49, 'RBRACE': -49, 'RPAR': -49, 'SLASH': -49, 'STAR': -49, 'TO': -49, 'WITHIN': -49, '_NL': -49},
    {'ABOVE': -48, 'AT': -48, 'BELOW': -48, 'CIRCUMFLEX': -48, 'COMMA': -48, 'FROM': -48, 'INTO': -48, 'LBRACE': -48, 'MINUS': -48, 'NAME': 106, 'PERCENT': 107, 'PLUS': -48, 'RBRACE': -48, 'RPAR': -48, 'SLASH': -48, 'STAR': -48, 'TO': -48, 'WITHIN': -48, '_NL': -48},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'expr': 108, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'unary': 109},
    {'ABOVE': -50, 'AT': -50, 'BELOW': -50, 'CIRCUMFLEX': -50, 'COMMA': -50, 'FROM': -50, 'INTO': -50, 'LBRACE': -50, 'MINUS': -50, 'PLUS': -50, 'RBRACE': -50, 'RPAR': -50, 'SLASH': -50, 'STAR': -50, 'TO': -50, 'WITHIN': -50, '_NL': -50},
    {'ABOVE': -45, 'AT': -45, 'BELOW': -45, 'CIRCUMFLEX': -45, 'COMMA': -45, 'FROM': -45, 'INTO': -45, 'LBRACE': -45, 'MINUS': -45, 'NAME': 110, 'PERCENT': 111, 'PLUS': -45, 'RBRACE': -45, 'RPAR': -45, 'SLASH': -45, 'STAR': -45, 'TO': -45, 'WITHIN': -45, '_NL': -45},
    {'ABOVE': -195, 'AT': -195, 'BELOW': -195, 'CIRCUMFLEX': -195, 'COMMA': -195, 'FROM': -195, 'INTO': -195, 'LBRACE': -195, 'MINUS': -195, 'PLUS': -195, 'RBRACE': -195, 'RPAR': -195, 'SLASH': -195, 'STAR': -195, 'TO': -195, 'WITHIN': -195, '_NL': -195},
    {'INTO': 112},
    {'ABOVE': -180, 'AT': -180, 'BELOW': -180, 'COMMA': -180, 'FROM': -180, 'INTO': -180, 'LBRACE': -180, 'MINUS': -180, 'PLUS': -180, 'RBRACE': -180, 'RPAR': -180, 'SLASH': -180, 'STAR': -180, 'TO': -180, 'WITHIN': -180, '_NL': -180},
    {'ABOVE': -191, 'AT': -191, 'BELOW': -191, 'COMMA': -191, 'FROM': -191, 'INTO': -191, 'LBRACE': -191, 'MINUS': -191, 'PLUS': -191, 'RBRACE': -191, 'RPAR': -191, 'SLASH': 113, 'STAR': 114, 'TO': -191, 'WITHIN': -191, '_NL': -191},
    {'ABOVE': -123, 'AT': -123, 'BELOW': -123, 'COMMA': -123, 'FROM': -123, 'INTO': -123, 'LBRACE': -123, 'MINUS': 115, 'PLUS': 116, 'RBRACE': -123, 'RPAR': -123, 'TO': -123, 'WITHIN': -123, '_NL': -123},
    {'ABOVE': -178, 'AT': -178, 'BELOW': -178, 'CIRCUMFLEX': 117, 'COMMA': -178, 'FROM': -178, 'INTO': -178, 'LBRACE': -178, 'MINUS': -178, 'PLUS': -178, 'RBRACE': -178, 'RPAR': -178, 'SLASH': -178, 'STAR': -178, 'TO': -178, 'WITHIN': -178, '_NL': -178},
    {'LBRACE': 118, 'STRING': 119, 'body': 120},
    {'LBRACE': 121, 'STRING': 122, 'THROUGH': 123, 'pins': 124},
    {'AND': 125},
    {'COMMA': -82, 'RBRACE': -82, '_NL': -82},
    {'CODE': 59, 'COMMA': -86, 'COMMA_NUMBER': 60, 'LBRACE': 126, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'RBRACE': -86, '_NL': -86, 'atom': 65, 'block': 127, 'expr': 128, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'ABOVE': 129, 'AT': 130, 'BELOW': 131, 'CODE': 59, 'COMMA': -122, 'COMMA_NUMBER': 60, 'FROM': 132, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'OF': 133, 'RBRACE': -122, 'WITHIN': 134, '_NL': -122, '__expect_star_8': 135, 'atom': 65, 'clause': 136, 'expr': 137, 'is': 138, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'AND': 139, 'COMMA': -125, 'RBRACE': -125, '_NL': -125, '__omit_star_7': 140},
    {'COMMA': -139, 'FROM': 141, 'RBRACE': -139, '_NL': -139},
    {'COMMA': -140, 'RBRACE': -140, '_NL': -140},
    {'CODE': 59, 'COMMA': -160, 'COMMA_NUMBER': 60, 'LBRACE': 126, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'RBRACE': -160, '_NL': -160, 'atom': 65, 'block': 142, 'expr': 143, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'AND': 144, 'LBRACE': 118, '__leg_star_2': 145, 'body': 146},
    {'EQUAL': 147},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'expr': 148, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'LPAR': 16, 'NAME': 17, 'PAD': 20, 'chain': 149, 'group': 39, 'path': 48, 'station': 86},
    {'RPAR': 150, 'VBAR': 151, '_NL': 152, '__group_star_4': 153},
    {'ARROW': 100, 'RPAR': -69, 'VBAR': -69, '_NL': -69, '__walk_star_3': 154},
    {'NAME': 155},
    {'ABOVE': -161, 'AND': -161, 'ARROW': -161, 'AT': -161, 'BECAUSE': -161, 'BELOW': -161, 'CODE': -161, 'COMMA': -161, 'COMMA_NUMBER': -161, 'DOT': 156, 'EQUAL': -161, 'FROM': -161, 'IN': -161, 'LPAR': -161, 'MINUS': -161, 'NAME': -161, 'NUMBER': -161, 'RBRACE': -161, 'RPAR': -161, 'VBAR': -161, 'WITHIN': -161, '_NL': -161},
    {'LPAR': 157},
    {'AND': 139, 'COMMA': -154, 'RBRACE': -154, '_NL': -154, '__omit_star_7': 158},
    {'LBRACE': 118, 'STRING': 159, 'body': 160},
    {'COMMA': -177, 'RBRACE': -177, '_NL': -177},
    {'EQUAL': 161},
    {'COMMA': -194, 'RBRACE': -194, '_NL': -194},
    {'AS': 162},
    {'LBRACE': 118, 'STRING': 163, 'body': 164},
    {'$END': -184, 'ALLOW': 1, 'AMPLIFIER': 2, 'CHOICE': 3, 'CONNECTOR': 4, 'COUPLING': 5, 'DESIGN': 6, 'DRIVER': 7, 'EXPECT': 8, 'FIT': 9, 'INCLUDE': 10, 'INPUT': 11, 'KIND': 12, 'LEG': 13, 'LET': 14, 'LIMIT': 15, 'LPAR': 16, 'NAME': 17, 'NETWORK': 18, 'OMIT': 19, 'PAD': 20, 'POSITION': 21, 'POSTS': 22, 'SET': 23, 'TESTPOINT': 24, 'USE': 25, 'VARIANT': 26, 'allow': 29, 'amplifier': 30, 'choice': 31, 'connector': 32, 'coupling': 33, 'design': 34, 'driver': 35, 'entry': 98, 'expect': 37, 'fit': 38, 'group': 39, 'include': 40, 'input': 41, 'leg': 42, 'let': 43, 'limit': 44, 'network': 45, 'omit': 46, 'part': 47, 'path': 48, 'position': 49, 'posts': 50, 'set': 51, 'station': 53, 'testpoint': 54, 'use': 55, 'variant': 56, 'walk': 57},
    {'_NL': 165},
    {'$END': -27, 'ALLOW': -27, 'AMPLIFIER': -27, 'CHOICE': -27, 'CONNECTOR': -27, 'COUPLING': -27, 'DESIGN': -27, 'DRIVER': -27, 'EXPECT': -27, 'FIT': -27, 'INCLUDE': -27, 'INPUT': -27, 'KIND': -27, 'LEG': -27, 'LET': -27, 'LIMIT': -27, 'LPAR': -27, 'NAME': -27, 'NETWORK': -27, 'OMIT': -27, 'PAD': -27, 'POSITION': -27, 'POSTS': -27, 'SET': -27, 'TESTPOINT': -27, 'USE': -27, 'VARIANT': -27},
    {'LPAR': 16, 'NAME': 17, 'PAD': 20, 'group': 39, 'path': 48, 'station': 166},
    {'ARROW': 167, 'COMMA': -201, 'RBRACE': -201, '_NL': -201},
    {'STRING': 168},
    {'NAME': 17, 'path': 169},
    {'NAME': 17, 'path': 170},
    {'BECAUSE': 171},
    {'ABOVE': -46, 'AT': -46, 'BELOW': -46, 'CIRCUMFLEX': -46, 'COMMA': -46, 'FROM': -46, 'INTO': -46, 'LBRACE': -46, 'MINUS': -46, 'PLUS': -46, 'RBRACE': -46, 'RPAR': -46, 'SLASH': -46, 'STAR': -46, 'TO': -46, 'WITHIN': -46, '_NL': -46},
    {'ABOVE': -47, 'AT': -47, 'BELOW': -47, 'CIRCUMFLEX': -47, 'COMMA': -47, 'FROM': -47, 'INTO': -47, 'LBRACE': -47, 'MINUS': -47, 'PLUS': -47, 'RBRACE': -47, 'RPAR': -47, 'SLASH': -47, 'STAR': -47, 'TO': -47, 'WITHIN': -47, '_NL': -47},
    {'RPAR': 172},
    {'ABOVE': -196, 'AT': -196, 'BELOW': -196, 'CIRCUMFLEX': -196, 'COMMA': -196, 'FROM': -196, 'INTO': -196, 'LBRACE': -196, 'MINUS': -196, 'PLUS': -196, 'RBRACE': -196, 'RPAR': -196, 'SLASH': -196, 'STAR': -196, 'TO': -196, 'WITHIN': -196, '_NL': -196},
    {'ABOVE': -43, 'AT': -43, 'BELOW': -43, 'CIRCUMFLEX': -43, 'COMMA': -43, 'FROM': -43, 'INTO': -43, 'LBRACE': -43, 'MINUS': -43, 'PLUS': -43, 'RBRACE': -43, 'RPAR': -43, 'SLASH': -43, 'STAR': -43, 'TO': -43, 'WITHIN': -43, '_NL': -43},
    {'ABOVE': -44, 'AT': -44, 'BELOW': -44, 'CIRCUMFLEX': -44, 'COMMA': -44, 'FROM': -44, 'INTO': -44, 'LBRACE': -44, 'MINUS': -44, 'PLUS': -44, 'RBRACE': -44, 'RPAR': -44, 'SLASH': -44, 'STAR': -44, 'TO': -44, 'WITHIN': -44, '_NL': -44},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'expr': 173, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'power': 174, 'unary': 70},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'power': 175, 'unary': 70},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'power': 67, 'product': 176, 'unary': 70},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'power': 67, 'product': 177, 'unary': 70},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'power': 178, 'unary': 70},
    {'ALLOW': 1, 'AMPLIFIER': 2, 'CHOICE': 3, 'CONNECTOR': 4, 'COUPLING': 5, 'DESIGN': 6, 'DRIVER': 7, 'EXPECT': 8, 'FIT': 9, 'INCLUDE': 10, 'INPUT': 11, 'KIND': 12, 'LEG': 13, 'LET': 14, 'LIMIT': 15, 'LPAR': 16, 'NAME': 17, 'NETWORK': 18, 'OMIT': 19, 'PAD': 20, 'POSITION': 21, 'POSTS': 22, 'RBRACE': 179, 'SET': 23, 'TESTPOINT': 24, 'USE': 25, 'VARIANT': 26, '_NL': 180, '__body_star_9': 181, 'allow': 29, 'amplifier': 30, 'choice': 31, 'connector': 32, 'coupling': 33, 'design': 34, 'driver': 35, 'entry': 182, 'expect': 37, 'fit': 38, 'group': 39, 'include': 40, 'input': 41, 'leg': 42, 'let': 43, 'limit': 44, 'network': 45, 'omit': 46, 'part': 47, 'path': 48, 'position': 49, 'posts': 50, 'set': 51, 'station': 53, 'testpoint': 54, 'use': 55, 'variant': 56, 'walk': 57},
    {'LBRACE': 118, 'body': 183},
    {'COMMA': -71, 'RBRACE': -71, '_NL': -71},
    {'NAME': 184, 'PIN': 185, 'RBRACE': 186, '_NL': 187, '__pins_star_1': 188, 'pin': 189},
    {'LBRACE': 121, 'THROUGH': 190, 'pins': 191},
    {'NAME': 192},
    {'COMMA': -79, 'RBRACE': -79, '_NL': -79},
    {'NAME': 17, 'path': 193},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 194, 'NUMBER': 64, 'RBRACE': 195, '_NL': 196, '__block_star_10': 197, 'atom': 65, 'expr': 198, 'item': 199, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'COMMA': -85, 'RBRACE': -85, '_NL': -85},
    {'COMMA': -84, 'LBRACE': 126, 'RBRACE': -84, '_NL': -84, 'block': 200},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'expr': 201, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'expr': 202, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'expr': 203, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'expr': 204, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'NAME': 17, 'path': 205},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'expr': 206, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'ABOVE': 129, 'AT': 130, 'BELOW': 131, 'COMMA': -121, 'FROM': 132, 'RBRACE': -121, 'WITHIN': 134, '_NL': -121, 'clause': 207},
    {'ABOVE': -5, 'AT': -5, 'BELOW': -5, 'COMMA': -5, 'FROM': -5, 'RBRACE': -5, 'WITHIN': -5, '_NL': -5},
    {'ABOVE': -141, 'AT': -141, 'BELOW': -141, 'COMMA': -141, 'FROM': -141, 'RBRACE': -141, 'WITHIN': -141, '_NL': -141},
    {'ABOVE': 129, 'AT': 130, 'BELOW': 131, 'COMMA': -120, 'FROM': 132, 'RBRACE': -120, 'WITHIN': 134, '_NL': -120, '__expect_star_8': 208, 'clause': 136},
    {'NAME': 17, 'path': 209},
    {'AND': 210, 'COMMA': -124, 'RBRACE': -124, '_NL': -124},
    {'LIBRARY': 211},
    {'COMMA': -159, 'RBRACE': -159, '_NL': -159},
    {'COMMA': -158, 'LBRACE': 126, 'RBRACE': -158, '_NL': -158, 'block': 212},
    {'NAME': 213},
    {'AND': 214, 'LBRACE': 118, 'body': 215},
    {'COMMA': -146, 'RBRACE': -146, '_NL': -146},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'expr': 216, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'COMMA': -148, 'RBRACE': -148, '_NL': -148},
    {'RPAR': 217, 'VBAR': 151, '_NL': 218, '__group_star_4': 219},
    {'ARROW': -135, 'COMMA': -135, 'RBRACE': -135, 'RPAR': -135, 'VBAR': -135, '_NL': -135},
    {'LPAR': 16, 'NAME': 17, 'PAD': 20, '_NL': 220, 'chain': 221, 'group': 39, 'path': 48, 'station': 86},
    {'RPAR': 222, 'VBAR': 223},
    {'RPAR': 224, 'VBAR': 225, '_NL': 226},
    {'ARROW': 167, 'RPAR': -68, 'VBAR': -68, '_NL': -68},
    {'ABOVE': -23, 'AND': -23, 'ARROW': -23, 'AT': -23, 'BECAUSE': -23, 'BELOW': -23, 'CODE': -23, 'COMMA': -23, 'COMMA_NUMBER': -23, 'DOT': -23, 'EQUAL': -23, 'FROM': -23, 'IN': -23, 'LPAR': -23, 'MINUS': -23, 'NAME': -23, 'NUMBER': -23, 'RBRACE': -23, 'RPAR': -23, 'VBAR': -23, 'WITHIN': -23, '_NL': -23},
    {'NAME': 227},
    {'NAME': 228},
    {'AND': 210, 'COMMA': -153, 'RBRACE': -153, '_NL': -153},
    {'LBRACE': 118, 'body': 229},
    {'COMMA': -176, 'RBRACE': -176, '_NL': -176},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'expr': 230, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'NAME': 231},
    {'LBRACE': 118, 'body': 232},
    {'COMMA': -200, 'RBRACE': -200, '_NL': -200},
    {'$END': -28, 'ALLOW': -28, 'AMPLIFIER': -28, 'CHOICE': -28, 'CONNECTOR': -28, 'COUPLING': -28, 'DESIGN': -28, 'DRIVER': -28, 'EXPECT': -28, 'FIT': -28, 'INCLUDE': -28, 'INPUT': -28, 'KIND': -28, 'LEG': -28, 'LET': -28, 'LIMIT': -28, 'LPAR': -28, 'NAME': -28, 'NETWORK': -28, 'OMIT': -28, 'PAD': -28, 'POSITION': -28, 'POSTS': -28, 'SET': -28, 'TESTPOINT': -28, 'USE': -28, 'VARIANT': -28},
    {'ARROW': -29, 'COMMA': -29, 'RBRACE': -29, 'RPAR': -29, 'VBAR': -29, '_NL': -29},
    {'LPAR': 16, 'NAME': 17, 'PAD': 20, 'group': 39, 'path': 48, 'station': 233},
    {'COMMA': -40, 'RBRACE': -40, '_NL': -40},
    {'AND': 139, 'BECAUSE': -137, '__omit_star_7': 234},
    {'BECAUSE': 235, 'IN': 103, 'in_variants': 236},
    {'STRING': 237},
    {'ABOVE': -51, 'AT': -51, 'BELOW': -51, 'CIRCUMFLEX': -51, 'COMMA': -51, 'FROM': -51, 'INTO': -51, 'LBRACE': -51, 'MINUS': -51, 'PLUS': -51, 'RBRACE': -51, 'RPAR': -51, 'SLASH': -51, 'STAR': -51, 'TO': -51, 'WITHIN': -51, '_NL': -51},
    {'COMMA': -42, 'LBRACE': 126, 'RBRACE': -42, '_NL': -42, 'block': 238},
    {'ABOVE': -182, 'AT': -182, 'BELOW': -182, 'COMMA': -182, 'FROM': -182, 'INTO': -182, 'LBRACE': -182, 'MINUS': -182, 'PLUS': -182, 'RBRACE': -182, 'RPAR': -182, 'SLASH': -182, 'STAR': -182, 'TO': -182, 'WITHIN': -182, '_NL': -182},
    {'ABOVE': -181, 'AT': -181, 'BELOW': -181, 'COMMA': -181, 'FROM': -181, 'INTO': -181, 'LBRACE': -181, 'MINUS': -181, 'PLUS': -181, 'RBRACE': -181, 'RPAR': -181, 'SLASH': -181, 'STAR': -181, 'TO': -181, 'WITHIN': -181, '_NL': -181},
    {'ABOVE': -193, 'AT': -193, 'BELOW': -193, 'COMMA': -193, 'FROM': -193, 'INTO': -193, 'LBRACE': -193, 'MINUS': -193, 'PLUS': -193, 'RBRACE': -193, 'RPAR': -193, 'SLASH': 113, 'STAR': 114, 'TO': -193, 'WITHIN': -193, '_NL': -193},
    {'ABOVE': -192, 'AT': -192, 'BELOW': -192, 'COMMA': -192, 'FROM': -192, 'INTO': -192, 'LBRACE': -192, 'MINUS': -192, 'PLUS': -192, 'RBRACE': -192, 'RPAR': -192, 'SLASH': 113, 'STAR': 114, 'TO': -192, 'WITHIN': -192, '_NL': -192},
    {'ABOVE': -179, 'AT': -179, 'BELOW': -179, 'COMMA': -179, 'FROM': -179, 'INTO': -179, 'LBRACE': -179, 'MINUS': -179, 'PLUS': -179, 'RBRACE': -179, 'RPAR': -179, 'SLASH': -179, 'STAR': -179, 'TO': -179, 'WITHIN': -179, '_NL': -179},
    {'COMMA': -67, 'RBRACE': -67, '_NL': -67},
    {'ALLOW': 1, 'AMPLIFIER': 2, 'CHOICE': 3, 'CONNECTOR': 4, 'COUPLING': 5, 'DESIGN': 6, 'DRIVER': 7, 'EXPECT': 8, 'FIT': 9, 'INCLUDE': 10, 'INPUT': 11, 'KIND': 12, 'LEG': 13, 'LET': 14, 'LIMIT': 15, 'LPAR': 16, 'NAME': 17, 'NETWORK': 18, 'OMIT': 19, 'PAD': 20, 'POSITION': 21, 'POSTS': 22, 'RBRACE': 239, 'SET': 23, 'TESTPOINT': 24, 'USE': 25, 'VARIANT': 26, '__body_star_9': 240, 'allow': 29, 'amplifier': 30, 'choice': 31, 'connector': 32, 'coupling': 33, 'design': 34, 'driver': 35, 'entry': 241, 'expect': 37, 'fit': 38, 'group': 39, 'include': 40, 'input': 41, 'leg': 42, 'let': 43, 'limit': 44, 'network': 45, 'omit': 46, 'part': 47, 'path': 48, 'position': 49, 'posts': 50, 'set': 51, 'station': 53, 'testpoint': 54, 'use': 55, 'variant': 56, 'walk': 57},
    {'ALLOW': 1, 'AMPLIFIER': 2, 'CHOICE': 3, 'CONNECTOR': 4, 'COUPLING': 5, 'DESIGN': 6, 'DRIVER': 7, 'EXPECT': 8, 'FIT': 9, 'INCLUDE': 10, 'INPUT': 11, 'KIND': 12, 'LEG': 13, 'LET': 14, 'LIMIT': 15, 'LPAR': 16, 'NAME': 17, 'NETWORK': 18, 'OMIT': 19, 'PAD': 20, 'POSITION': 21, 'POSTS': 22, 'RBRACE': 242, 'SET': 23, 'TESTPOINT': 24, 'USE': 25, 'VARIANT': 26, 'allow': 29, 'amplifier': 30, 'choice': 31, 'connector': 32, 'coupling': 33, 'design': 34, 'driver': 35, 'entry': 243, 'expect': 37, 'fit': 38, 'group': 39, 'include': 40, 'input': 41, 'leg': 42, 'let': 43, 'limit': 44, 'network': 45, 'omit': 46, 'part': 47, 'path': 48, 'position': 49, 'posts': 50, 'set': 51, 'station': 53, 'testpoint': 54, 'use': 55, 'variant': 56, 'walk': 57},
    {'COMMA': 244, 'RBRACE': 245, '_NL': 246, '_sep': 247},
    {'COMMA': -70, 'RBRACE': -70, '_NL': -70},
    {'PAD': 248, 'UNUSED': 249},
    {'PAD': 250, 'UNUSED': 251},
    {'COMMA': -174, 'RBRACE': -174, '_NL': -174},
    {'NAME': 184, 'PIN': 185, 'RBRACE': 252, '__pins_star_1': 253, 'pin': 254},
    {'NAME': 184, 'PIN': 185, 'RBRACE': 255, 'pin': 256},
    {'COMMA': 257, 'RBRACE': 258, '_NL': 259, '_pin_sep': 260},
    {'NAME': 261},
    {'COMMA': -77, 'RBRACE': -77, '_NL': -77},
    {'COMMA': -80, 'RBRACE': -80, '_NL': -80},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'expr': 262, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'CIRCUMFLEX': -50, 'CODE': 59, 'COMMA': -50, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'PLUS': -50, 'RBRACE': -50, 'SLASH': -50, 'STAR': -50, 'STRING': 263, '_NL': -50, 'atom': 65, 'expr': 264, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'COMMA': -59, 'RBRACE': -59, '_NL': -59},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 194, 'NUMBER': 64, 'RBRACE': 265, '__block_star_10': 266, 'atom': 65, 'expr': 198, 'item': 267, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 194, 'NUMBER': 64, 'RBRACE': 268, 'atom': 65, 'expr': 198, 'item': 269, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'COMMA': -142, 'RBRACE': -142, '_NL': -142},
    {'COMMA': 244, 'RBRACE': 270, '_NL': 246, '_sep': 271},
    {'COMMA': -83, 'RBRACE': -83, '_NL': -83},
    {'ABOVE': -74, 'AT': -74, 'BELOW': -74, 'COMMA': -74, 'FROM': -74, 'RBRACE': -74, 'WITHIN': -74, '_NL': -74},
    {'ABOVE': -72, 'AT': -72, 'BELOW': -72, 'COMMA': -72, 'FROM': -72, 'RBRACE': -72, 'WITHIN': -72, '_NL': -72},
    {'ABOVE': -75, 'AT': -75, 'BELOW': -75, 'COMMA': -75, 'FROM': -75, 'RBRACE': -75, 'WITHIN': -75, '_NL': -75},
    {'TO': 272},
    {'ABOVE': 129, 'AND': 139, 'AT': 130, 'BELOW': 131, 'CODE': 59, 'COMMA': -118, 'COMMA_NUMBER': 60, 'FROM': 132, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'RBRACE': -118, 'WITHIN': 134, '_NL': -118, '__expect_star_8': 273, '__omit_star_7': 274, 'atom': 65, 'clause': 136, 'expr': 137, 'is': 275, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'ABOVE': -73, 'AT': -73, 'BELOW': -73, 'COMMA': -73, 'FROM': -73, 'RBRACE': -73, 'WITHIN': -73, '_NL': -73},
    {'ABOVE': -6, 'AT': -6, 'BELOW': -6, 'COMMA': -6, 'FROM': -6, 'RBRACE': -6, 'WITHIN': -6, '_NL': -6},
    {'ABOVE': 129, 'AT': 130, 'BELOW': 131, 'COMMA': -119, 'FROM': 132, 'RBRACE': -119, 'WITHIN': 134, '_NL': -119, 'clause': 207},
    {'ABOVE': -21, 'AND': -21, 'AT': -21, 'BECAUSE': -21, 'BELOW': -21, 'CODE': -21, 'COMMA': -21, 'COMMA_NUMBER': -21, 'FROM': -21, 'LPAR': -21, 'MINUS': -21, 'NAME': -21, 'NUMBER': -21, 'RBRACE': -21, 'WITHIN': -21, '_NL': -21},
    {'NAME': 17, 'path': 276},
    {'COMMA': -138, 'RBRACE': -138, '_NL': -138},
    {'COMMA': -157, 'RBRACE': -157, '_NL': -157},
    {'AND': -17, 'LBRACE': -17},
    {'NAME': 277},
    {'COMMA': -145, 'RBRACE': -145, '_NL': -145},
    {'COMMA': -147, 'RBRACE': -147, '_NL': -147},
    {'ARROW': -131, 'COMMA': -131, 'RBRACE': -131, 'RPAR': -131, 'VBAR': -131, '_NL': -131},
    {'RPAR': 278, 'VBAR': 223},
    {'RPAR': 279, 'VBAR': 225, '_NL': 280},
    {'LPAR': 16, 'NAME': 17, 'PAD': 20, 'chain': 281, 'group': 39, 'path': 48, 'station': 86},
    {'RPAR': -12, 'VBAR': -12, '_NL': -12},
    {'ARROW': -134, 'COMMA': -134, 'RBRACE': -134, 'RPAR': -134, 'VBAR': -134, '_NL': -134},
    {'LPAR': 16, 'NAME': 17, 'PAD': 20, '_NL': 282, 'chain': 283, 'group': 39, 'path': 48, 'station': 86},
    {'ARROW': -133, 'COMMA': -133, 'RBRACE': -133, 'RPAR': -133, 'VBAR': -133, '_NL': -133},
    {'LPAR': 16, 'NAME': 17, 'PAD': 20, '_NL': 284, 'chain': 285, 'group': 39, 'path': 48, 'station': 86},
    {'RPAR': 286, 'VBAR': 287},
    {'ABOVE': -24, 'AND': -24, 'ARROW': -24, 'AT': -24, 'BECAUSE': -24, 'BELOW': -24, 'CODE': -24, 'COMMA': -24, 'COMMA_NUMBER': -24, 'DOT': -24, 'EQUAL': -24, 'FROM': -24, 'IN': -24, 'LPAR': -24, 'MINUS': -24, 'NAME': -24, 'NUMBER': -24, 'RBRACE': -24, 'RPAR': -24, 'VBAR': -24, 'WITHIN': -24, '_NL': -24},
    {'COMMA': 288, 'RPAR': 289, '__network_star_5': 290},
    {'COMMA': -175, 'RBRACE': -175, '_NL': -175},
    {'COMMA': -183, 'RBRACE': -183, '_NL': -183},
    {'COMMA': -198, 'LBRACE': 126, 'RBRACE': -198, '_NL': -198, 'block': 291},
    {'COMMA': -199, 'RBRACE': -199, '_NL': -199},
    {'ARROW': -30, 'COMMA': -30, 'RBRACE': -30, 'RPAR': -30, 'VBAR': -30, '_NL': -30},
    {'AND': 210, 'BECAUSE': -136},
    {'STRING': 292},
    {'BECAUSE': 293},
    {'COMMA': -39, 'RBRACE': -39, '_NL': -39},
    {'COMMA': -41, 'RBRACE': -41, '_NL': -41},
    {'COMMA': -63, 'RBRACE': -63, '_NL': -63},
    {'ALLOW': 1, 'AMPLIFIER': 2, 'CHOICE': 3, 'CONNECTOR': 4, 'COUPLING': 5, 'DESIGN': 6, 'DRIVER': 7, 'EXPECT': 8, 'FIT': 9, 'INCLUDE': 10, 'INPUT': 11, 'KIND': 12, 'LEG': 13, 'LET': 14, 'LIMIT': 15, 'LPAR': 16, 'NAME': 17, 'NETWORK': 18, 'OMIT': 19, 'PAD': 20, 'POSITION': 21, 'POSTS': 22, 'RBRACE': 294, 'SET': 23, 'TESTPOINT': 24, 'USE': 25, 'VARIANT': 26, 'allow': 29, 'amplifier': 30, 'choice': 31, 'connector': 32, 'coupling': 33, 'design': 34, 'driver': 35, 'entry': 295, 'expect': 37, 'fit': 38, 'group': 39, 'include': 40, 'input': 41, 'leg': 42, 'let': 43, 'limit': 44, 'network': 45, 'omit': 46, 'part': 47, 'path': 48, 'position': 49, 'posts': 50, 'set': 51, 'station': 53, 'testpoint': 54, 'use': 55, 'variant': 56, 'walk': 57},
    {'COMMA': 244, 'RBRACE': 296, '_NL': 246, '_sep': 247},
    {'COMMA': -65, 'RBRACE': -65, '_NL': -65},
    {'COMMA': 244, 'RBRACE': 297, '_NL': 246, '_sep': 298},
    {'ALLOW': -35, 'AMPLIFIER': -35, 'CHOICE': -35, 'CODE': -35, 'COMMA_NUMBER': -35, 'CONNECTOR': -35, 'COUPLING': -35, 'DESIGN': -35, 'DRIVER': -35, 'EXPECT': -35, 'FIT': -35, 'INCLUDE': -35, 'INPUT': -35, 'KIND': -35, 'LEG': -35, 'LET': -35, 'LIMIT': -35, 'LPAR': -35, 'MINUS': -35, 'NAME': -35, 'NETWORK': -35, 'NUMBER': -35, 'OMIT': -35, 'PAD': -35, 'POSITION': -35, 'POSTS': -35, 'RBRACE': -35, 'SET': -35, 'TESTPOINT': -35, 'USE': -35, 'VARIANT': -35, '_NL': 299},
    {'COMMA': -66, 'RBRACE': -66, '_NL': -66},
    {'ALLOW': -36, 'AMPLIFIER': -36, 'CHOICE': -36, 'CODE': -36, 'COMMA_NUMBER': -36, 'CONNECTOR': -36, 'COUPLING': -36, 'DESIGN': -36, 'DRIVER': -36, 'EXPECT': -36, 'FIT': -36, 'INCLUDE': -36, 'INPUT': -36, 'KIND': -36, 'LEG': -36, 'LET': -36, 'LIMIT': -36, 'LPAR': -36, 'MINUS': -36, 'NAME': -36, 'NETWORK': -36, 'NUMBER': -36, 'OMIT': -36, 'PAD': -36, 'POSITION': -36, 'POSTS': -36, 'RBRACE': -36, 'SET': -36, 'TESTPOINT': -36, 'USE': -36, 'VARIANT': -36},
    {'ALLOW': -3, 'AMPLIFIER': -3, 'CHOICE': -3, 'CONNECTOR': -3, 'COUPLING': -3, 'DESIGN': -3, 'DRIVER': -3, 'EXPECT': -3, 'FIT': -3, 'INCLUDE': -3, 'INPUT': -3, 'KIND': -3, 'LEG': -3, 'LET': -3, 'LIMIT': -3, 'LPAR': -3, 'NAME': -3, 'NETWORK': -3, 'OMIT': -3, 'PAD': -3, 'POSITION': -3, 'POSTS': -3, 'RBRACE': -3, 'SET': -3, 'TESTPOINT': -3, 'USE': -3, 'VARIANT': -3},
    {'COMMA': -165, 'RBRACE': -165, '_NL': -165},
    {'COMMA': -166, 'RBRACE': -166, '_NL': -166},
    {'COMMA': -163, 'RBRACE': -163, '_NL': -163},
    {'COMMA': -164, 'RBRACE': -164, '_NL': -164},
    {'COMMA': -170, 'RBRACE': -170, '_NL': -170},
    {'NAME': 184, 'PIN': 185, 'RBRACE': 300, 'pin': 301},
    {'COMMA': 257, 'RBRACE': 302, '_NL': 259, '_pin_sep': 260},
    {'COMMA': -172, 'RBRACE': -172, '_NL': -172},
    {'COMMA': 257, 'RBRACE': 303, '_NL': 259, '_pin_sep': 304},
    {'NAME': -32, 'PIN': -32, 'RBRACE': -32, '_NL': 305},
    {'COMMA': -173, 'RBRACE': -173, '_NL': -173},
    {'NAME': -33, 'PIN': -33, 'RBRACE': -33},
    {'NAME': -25, 'PIN': -25, 'RBRACE': -25},
    {'COMMA': -78, 'RBRACE': -78, '_NL': -78},
    {'COMMA': -81, 'RBRACE': -81, '_NL': -81},
    {'COMMA': -144, 'RBRACE': -144, '_NL': -144},
    {'COMMA': -143, 'RBRACE': -143, '_NL': -143},
    {'COMMA': -55, 'RBRACE': -55, '_NL': -55},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 194, 'NUMBER': 64, 'RBRACE': 306, 'atom': 65, 'expr': 198, 'item': 307, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'COMMA': 244, 'RBRACE': 308, '_NL': 246, '_sep': 271},
    {'COMMA': -57, 'RBRACE': -57, '_NL': -57},
    {'COMMA': 244, 'RBRACE': 309, '_NL': 246, '_sep': 310},
    {'COMMA': -58, 'RBRACE': -58, '_NL': -58},
    {'CODE': -1, 'COMMA_NUMBER': -1, 'LPAR': -1, 'MINUS': -1, 'NAME': -1, 'NUMBER': -1, 'RBRACE': -1},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'expr': 311, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'ABOVE': 129, 'AT': 130, 'BELOW': 131, 'COMMA': -117, 'FROM': 132, 'RBRACE': -117, 'WITHIN': 134, '_NL': -117, 'clause': 207},
    {'ABOVE': 129, 'AND': 210, 'AT': 130, 'BELOW': 131, 'CODE': 59, 'COMMA': -114, 'COMMA_NUMBER': 60, 'FROM': 132, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'RBRACE': -114, 'WITHIN': 134, '_NL': -114, '__expect_star_8': 312, 'atom': 65, 'clause': 136, 'expr': 137, 'is': 313, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'ABOVE': 129, 'AT': 130, 'BELOW': 131, 'COMMA': -116, 'FROM': 132, 'RBRACE': -116, 'WITHIN': 134, '_NL': -116, '__expect_star_8': 314, 'clause': 136},
    {'ABOVE': -22, 'AND': -22, 'AT': -22, 'BECAUSE': -22, 'BELOW': -22, 'CODE': -22, 'COMMA': -22, 'COMMA_NUMBER': -22, 'FROM': -22, 'LPAR': -22, 'MINUS': -22, 'NAME': -22, 'NUMBER': -22, 'RBRACE': -22, 'WITHIN': -22, '_NL': -22},
    {'AND': -18, 'LBRACE': -18},
    {'ARROW': -130, 'COMMA': -130, 'RBRACE': -130, 'RPAR': -130, 'VBAR': -130, '_NL': -130},
    {'ARROW': -129, 'COMMA': -129, 'RBRACE': -129, 'RPAR': -129, 'VBAR': -129, '_NL': -129},
    {'RPAR': 315, 'VBAR': 287},
    {'RPAR': -11, 'VBAR': -11, '_NL': -11},
    {'LPAR': 16, 'NAME': 17, 'PAD': 20, 'chain': 316, 'group': 39, 'path': 48, 'station': 86},
    {'RPAR': -10, 'VBAR': -10, '_NL': -10},
    {'LPAR': 16, 'NAME': 17, 'PAD': 20, 'chain': 317, 'group': 39, 'path': 48, 'station': 86},
    {'RPAR': -16, 'VBAR': -16, '_NL': -16},
    {'ARROW': -132, 'COMMA': -132, 'RBRACE': -132, 'RPAR': -132, 'VBAR': -132, '_NL': -132},
    {'LPAR': 16, 'NAME': 17, 'PAD': 20, '_NL': 318, 'chain': 319, 'group': 39, 'path': 48, 'station': 86},
    {'NAME': 320},
    {'GIVEN': 321, 'LBRACE': 118, 'body': 322, 'given': 323},
    {'COMMA': 324, 'RPAR': 325},
    {'COMMA': -197, 'RBRACE': -197, '_NL': -197},
    {'COMMA': -38, 'RBRACE': -38, '_NL': -38},
    {'STRING': 326},
    {'COMMA': -61, 'RBRACE': -61, '_NL': -61},
    {'COMMA': 244, 'RBRACE': 327, '_NL': 246, '_sep': 298},
    {'COMMA': -62, 'RBRACE': -62, '_NL': -62},
    {'COMMA': -64, 'RBRACE': -64, '_NL': -64},
    {'ALLOW': -4, 'AMPLIFIER': -4, 'CHOICE': -4, 'CONNECTOR': -4, 'COUPLING': -4, 'DESIGN': -4, 'DRIVER': -4, 'EXPECT': -4, 'FIT': -4, 'INCLUDE': -4, 'INPUT': -4, 'KIND': -4, 'LEG': -4, 'LET': -4, 'LIMIT': -4, 'LPAR': -4, 'NAME': -4, 'NETWORK': -4, 'OMIT': -4, 'PAD': -4, 'POSITION': -4, 'POSTS': -4, 'RBRACE': -4, 'SET': -4, 'TESTPOINT': -4, 'USE': -4, 'VARIANT': -4},
    {'ALLOW': -34, 'AMPLIFIER': -34, 'CHOICE': -34, 'CODE': -34, 'COMMA_NUMBER': -34, 'CONNECTOR': -34, 'COUPLING': -34, 'DESIGN': -34, 'DRIVER': -34, 'EXPECT': -34, 'FIT': -34, 'INCLUDE': -34, 'INPUT': -34, 'KIND': -34, 'LEG': -34, 'LET': -34, 'LIMIT': -34, 'LPAR': -34, 'MINUS': -34, 'NAME': -34, 'NETWORK': -34, 'NUMBER': -34, 'OMIT': -34, 'PAD': -34, 'POSITION': -34, 'POSTS': -34, 'RBRACE': -34, 'SET': -34, 'TESTPOINT': -34, 'USE': -34, 'VARIANT': -34},
    {'COMMA': -168, 'RBRACE': -168, '_NL': -168},
    {'COMMA': 257, 'RBRACE': 328, '_NL': 259, '_pin_sep': 304},
    {'COMMA': -169, 'RBRACE': -169, '_NL': -169},
    {'COMMA': -171, 'RBRACE': -171, '_NL': -171},
    {'NAME': -26, 'PIN': -26, 'RBRACE': -26},
    {'NAME': -31, 'PIN': -31, 'RBRACE': -31},
    {'COMMA': -53, 'RBRACE': -53, '_NL': -53},
    {'COMMA': 244, 'RBRACE': 329, '_NL': 246, '_sep': 310},
    {'COMMA': -54, 'RBRACE': -54, '_NL': -54},
    {'COMMA': -56, 'RBRACE': -56, '_NL': -56},
    {'CODE': -2, 'COMMA_NUMBER': -2, 'LPAR': -2, 'MINUS': -2, 'NAME': -2, 'NUMBER': -2, 'RBRACE': -2},
    {'ABOVE': -76, 'AT': -76, 'BELOW': -76, 'COMMA': -76, 'FROM': -76, 'RBRACE': -76, 'WITHIN': -76, '_NL': -76},
    {'ABOVE': 129, 'AT': 130, 'BELOW': 131, 'COMMA': -113, 'FROM': 132, 'RBRACE': -113, 'WITHIN': 134, '_NL': -113, 'clause': 207},
    {'ABOVE': 129, 'AT': 130, 'BELOW': 131, 'COMMA': -112, 'FROM': 132, 'RBRACE': -112, 'WITHIN': 134, '_NL': -112, '__expect_star_8': 330, 'clause': 136},
    {'ABOVE': 129, 'AT': 130, 'BELOW': 131, 'COMMA': -115, 'FROM': 132, 'RBRACE': -115, 'WITHIN': 134, '_NL': -115, 'clause': 207},
    {'ARROW': -128, 'COMMA': -128, 'RBRACE': -128, 'RPAR': -128, 'VBAR': -128, '_NL': -128},
    {'RPAR': -9, 'VBAR': -9, '_NL': -9},
    {'RPAR': -15, 'VBAR': -15, '_NL': -15},
    {'LPAR': 16, 'NAME': 17, 'PAD': 20, 'chain': 331, 'group': 39, 'path': 48, 'station': 86},
    {'RPAR': -14, 'VBAR': -14, '_NL': -14},
    {'COMMA': -19, 'RPAR': -19},
    {'NAME': 332, 'param': 333},
    {'COMMA': -152, 'RBRACE': -152, '_NL': -152},
    {'LBRACE': 118, 'body': 334},
    {'NAME': 335},
    {'GIVEN': 321, 'LBRACE': 118, 'body': 336, 'given': 337},
    {'COMMA': -37, 'RBRACE': -37, '_NL': -37},
    {'COMMA': -60, 'RBRACE': -60, '_NL': -60},
    {'COMMA': -167, 'RBRACE': -167, '_NL': -167},
    {'COMMA': -52, 'RBRACE': -52, '_NL': -52},
    {'ABOVE': 129, 'AT': 130, 'BELOW': 131, 'COMMA': -111, 'FROM': 132, 'RBRACE': -111, 'WITHIN': 134, '_NL': -111, 'clause': 207},
    {'RPAR': -13, 'VBAR': -13, '_NL': -13},
    {'COMMA': -156, 'EQUAL': 338, 'LBRACE': -156},
    {'COMMA': 339, 'LBRACE': -127, '__given_star_6': 340},
    {'COMMA': -151, 'RBRACE': -151, '_NL': -151},
    {'COMMA': -20, 'RPAR': -20},
    {'COMMA': -150, 'RBRACE': -150, '_NL': -150},
    {'LBRACE': 118, 'body': 341},
    {'CODE': 59, 'COMMA_NUMBER': 60, 'LPAR': 61, 'MINUS': 62, 'NAME': 63, 'NUMBER': 64, 'atom': 65, 'expr': 342, 'power': 67, 'product': 68, 'sum': 69, 'unary': 70},
    {'NAME': 332, 'param': 343},
    {'COMMA': 344, 'LBRACE': -126},
    {'COMMA': -149, 'RBRACE': -149, '_NL': -149},
    {'COMMA': -155, 'LBRACE': -155},
    {'COMMA': -7, 'LBRACE': -7},
    {'NAME': 332, 'param': 345},
    {'COMMA': -8, 'LBRACE': -8},
)
