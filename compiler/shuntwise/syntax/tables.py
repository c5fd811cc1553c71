"""The automaton's tables. Do not edit: made from the grammar by `python -m shuntwise.house.tables`.

`TERMINALS` are patterns in the order in which they are tried, `KEYWORDS` words that are names elsewhere. A rule is
its symbol, its node's name (None: its children go to the rule above), its length, the places of the children that
are kept, and whether a lone child stands for the node. A state leads by symbol to another, or (below zero) to the
rule ~n that is then reduced. `PART_KINDS` are the words that declare a part, each with an example of what follows.

The module is long because it is a table.
"""

from __future__ import annotations

START, END = 0, 50
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
    'POSITION': 'position(?=[ \t\xa0]+[^\\W\\d]|[ \t\xa0]*\\{)',
    'CHOICE': 'choice(?=[ \t\xa0]+[^\\W\\d]|[ \t\xa0]*\\{)',
    'COMMA_NUMBER': '[0-9]+,[0-9]+(?:[eE][+-]?[0-9]+)?',
    'NUMBER': '(?:[0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)(?:[eE][+-]?[0-9]+(?!\\w))?',
    '_NL': '\r?\n(?:[ \t\xa0]*(?:#[^\n]*)?\r?\n)*',
    'ARROW': '--(?:[ \t\xa0]*(?:#[^\n]*)?\r?\n)*',
    'NAME': 'non-polar(?!\\w)|[^\\W\\d]\\w*',
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
    'VARIANT': 'variant',
    'DESIGN': 'design',
    'DRIVER': 'driver',
    'EXPECT': 'expect',
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
    'variant': 'VARIANT',
    'design': 'DESIGN',
    'driver': 'DRIVER',
    'expect': 'EXPECT',
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
    ('__block_star_9', None, 2, (0, 1), False),  # __block_star_9: item _sep
    ('__block_star_9', None, 3, (0, 1, 2), False),  # __block_star_9: __block_star_9 item _sep
    ('__body_star_8', None, 2, (0, 1), False),  # __body_star_8: entry _sep
    ('__body_star_8', None, 3, (0, 1, 2), False),  # __body_star_8: __body_star_8 entry _sep
    ('__expect_star_7', None, 1, (0,), False),  # __expect_star_7: clause
    ('__expect_star_7', None, 2, (0, 1), False),  # __expect_star_7: __expect_star_7 clause
    ('__given_star_5', None, 2, (1,), False),  # __given_star_5: COMMA param
    ('__given_star_5', None, 3, (0, 2), False),  # __given_star_5: __given_star_5 COMMA param
    ('__group_star_3', None, 4, (3,), False),  # __group_star_3: _NL VBAR _NL chain
    ('__group_star_3', None, 3, (2,), False),  # __group_star_3: _NL VBAR chain
    ('__group_star_3', None, 3, (2,), False),  # __group_star_3: VBAR _NL chain
    ('__group_star_3', None, 2, (1,), False),  # __group_star_3: VBAR chain
    ('__group_star_3', None, 5, (0, 4), False),  # __group_star_3: __group_star_3 _NL VBAR _NL chain
    ('__group_star_3', None, 4, (0, 3), False),  # __group_star_3: __group_star_3 _NL VBAR chain
    ('__group_star_3', None, 4, (0, 3), False),  # __group_star_3: __group_star_3 VBAR _NL chain
    ('__group_star_3', None, 3, (0, 2), False),  # __group_star_3: __group_star_3 VBAR chain
    ('__leg_star_1', None, 2, (1,), False),  # __leg_star_1: AND NAME
    ('__leg_star_1', None, 3, (0, 2), False),  # __leg_star_1: __leg_star_1 AND NAME
    ('__network_star_4', None, 2, (1,), False),  # __network_star_4: COMMA NAME
    ('__network_star_4', None, 3, (0, 2), False),  # __network_star_4: __network_star_4 COMMA NAME
    ('__omit_star_6', None, 2, (1,), False),  # __omit_star_6: AND path
    ('__omit_star_6', None, 3, (0, 2), False),  # __omit_star_6: __omit_star_6 AND path
    ('__path_star_10', None, 2, (1,), False),  # __path_star_10: DOT NAME
    ('__path_star_10', None, 3, (0, 2), False),  # __path_star_10: __path_star_10 DOT NAME
    ('__start_star_0', None, 2, (0,), False),  # __start_star_0: entry _NL
    ('__start_star_0', None, 3, (0, 1), False),  # __start_star_0: __start_star_0 entry _NL
    ('__walk_star_2', None, 2, (0, 1), False),  # __walk_star_2: ARROW station
    ('__walk_star_2', None, 3, (0, 1, 2), False),  # __walk_star_2: __walk_star_2 ARROW station
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
    ('block', 'block', 5, (2, 3), False),  # block: LBRACE _NL __block_star_9 item RBRACE
    ('block', 'block', 4, (2,), False),  # block: LBRACE _NL __block_star_9 RBRACE
    ('block', 'block', 4, (2,), False),  # block: LBRACE _NL item RBRACE
    ('block', 'block', 3, (), False),  # block: LBRACE _NL RBRACE
    ('block', 'block', 4, (1, 2), False),  # block: LBRACE __block_star_9 item RBRACE
    ('block', 'block', 3, (1,), False),  # block: LBRACE __block_star_9 RBRACE
    ('block', 'block', 3, (1,), False),  # block: LBRACE item RBRACE
    ('block', 'block', 2, (), False),  # block: LBRACE RBRACE
    ('body', 'body', 5, (2, 3), False),  # body: LBRACE _NL __body_star_8 entry RBRACE
    ('body', 'body', 4, (2,), False),  # body: LBRACE _NL __body_star_8 RBRACE
    ('body', 'body', 4, (2,), False),  # body: LBRACE _NL entry RBRACE
    ('body', 'body', 3, (), False),  # body: LBRACE _NL RBRACE
    ('body', 'body', 4, (1, 2), False),  # body: LBRACE __body_star_8 entry RBRACE
    ('body', 'body', 3, (1,), False),  # body: LBRACE __body_star_8 RBRACE
    ('body', 'body', 3, (1,), False),  # body: LBRACE entry RBRACE
    ('body', 'body', 2, (), False),  # body: LBRACE RBRACE
    ('chain', 'chain', 2, (0, 1), False),  # chain: station __walk_star_2
    ('chain', 'chain', 1, (0,), False),  # chain: station
    ('choice', 'choice', 4, (0, 1, 2, 3), False),  # choice: CHOICE NAME STRING body
    ('choice', 'choice', 3, (0, 1, 2), False),  # choice: CHOICE NAME body
    ('clause', 'at', 2, (1,), False),  # clause: AT expr
    ('clause', 'within', 2, (1,), False),  # clause: WITHIN expr
    ('clause', 'above', 2, (1,), False),  # clause: ABOVE expr
    ('clause', 'below', 2, (1,), False),  # clause: BELOW expr
    ('clause', 'from_to', 4, (0, 1, 3), False),  # clause: FROM expr TO expr
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
    ('expect', 'expect', 7, (1, 3, 4, 5, 6), False),  # expect: EXPECT NAME OF path __omit_star_6 is __expect_star_7
    ('expect', 'expect', 6, (1, 3, 4, 5), False),  # expect: EXPECT NAME OF path __omit_star_6 is
    ('expect', 'expect', 6, (1, 3, 4, 5), False),  # expect: EXPECT NAME OF path __omit_star_6 __expect_star_7
    ('expect', 'expect', 5, (1, 3, 4), False),  # expect: EXPECT NAME OF path __omit_star_6
    ('expect', 'expect', 6, (1, 3, 4, 5), False),  # expect: EXPECT NAME OF path is __expect_star_7
    ('expect', 'expect', 5, (1, 3, 4), False),  # expect: EXPECT NAME OF path is
    ('expect', 'expect', 5, (1, 3, 4), False),  # expect: EXPECT NAME OF path __expect_star_7
    ('expect', 'expect', 4, (1, 3), False),  # expect: EXPECT NAME OF path
    ('expect', 'expect', 4, (1, 2, 3), False),  # expect: EXPECT NAME is __expect_star_7
    ('expect', 'expect', 3, (1, 2), False),  # expect: EXPECT NAME is
    ('expect', 'expect', 3, (1, 2), False),  # expect: EXPECT NAME __expect_star_7
    ('expect', 'expect', 2, (1,), False),  # expect: EXPECT NAME
    ('expr', 'expr', 1, (0,), True),  # expr: sum
    ('fit', 'fit', 3, (1, 2), False),  # fit: FIT path __omit_star_6
    ('fit', 'fit', 2, (1,), False),  # fit: FIT path
    ('given', 'given', 3, (1, 2), False),  # given: GIVEN param __given_star_5
    ('given', 'given', 2, (1,), False),  # given: GIVEN param
    ('group', 'group', 6, (2, 3), False),  # group: LPAR _NL chain __group_star_3 _NL RPAR
    ('group', 'group', 5, (2, 3), False),  # group: LPAR _NL chain __group_star_3 RPAR
    ('group', 'group', 5, (2,), False),  # group: LPAR _NL chain _NL RPAR
    ('group', 'group', 4, (2,), False),  # group: LPAR _NL chain RPAR
    ('group', 'group', 5, (1, 2), False),  # group: LPAR chain __group_star_3 _NL RPAR
    ('group', 'group', 4, (1, 2), False),  # group: LPAR chain __group_star_3 RPAR
    ('group', 'group', 4, (1,), False),  # group: LPAR chain _NL RPAR
    ('group', 'group', 3, (1,), False),  # group: LPAR chain RPAR
    ('in_variants', 'in_variants', 3, (1, 2), False),  # in_variants: IN path __omit_star_6
    ('in_variants', 'in_variants', 2, (1,), False),  # in_variants: IN path
    ('include', 'include', 4, (1, 2), False),  # include: INCLUDE STRING FROM LIBRARY
    ('include', 'include', 2, (1,), False),  # include: INCLUDE STRING
    ('input', 'input', 2, (1,), False),  # input: INPUT NAME
    ('is', 'is', 1, (0,), False),  # is: expr
    ('item', 'bare', 1, (0,), False),  # item: expr
    ('item', 'keyed', 2, (0, 1), False),  # item: NAME expr
    ('item', 'texted', 2, (0, 1), False),  # item: NAME STRING
    ('leg', 'leg', 4, (1, 2, 3), False),  # leg: LEG NAME __leg_star_1 body
    ('leg', 'leg', 3, (1, 2), False),  # leg: LEG NAME body
    ('let', 'let', 4, (1, 3), False),  # let: LET NAME EQUAL expr
    ('limit', 'limit', 3, (1, 2), False),  # limit: LIMIT FINDING expr
    ('network', 'network', 8, (1, 3, 4, 6, 7), False),  # network: NETWORK NAME LPAR NAME __network_star_4 RPAR given body
    ('network', 'network', 7, (1, 3, 4, 6), False),  # network: NETWORK NAME LPAR NAME __network_star_4 RPAR body
    ('network', 'network', 7, (1, 3, 5, 6), False),  # network: NETWORK NAME LPAR NAME RPAR given body
    ('network', 'network', 6, (1, 3, 5), False),  # network: NETWORK NAME LPAR NAME RPAR body
    ('omit', 'omit', 3, (1, 2), False),  # omit: OMIT path __omit_star_6
    ('omit', 'omit', 2, (1,), False),  # omit: OMIT path
    ('param', 'param', 3, (0, 2), False),  # param: NAME EQUAL expr
    ('param', 'param', 1, (0,), False),  # param: NAME
    ('part', 'part', 4, (0, 1, 2, 3), False),  # part: KIND NAME expr block
    ('part', 'part', 3, (0, 1, 2), False),  # part: KIND NAME expr
    ('part', 'part', 3, (0, 1, 2), False),  # part: KIND NAME block
    ('part', 'part', 2, (0, 1), False),  # part: KIND NAME
    ('path', 'path', 2, (0, 1), False),  # path: NAME __path_star_10
    ('path', 'path', 1, (0,), False),  # path: NAME
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
    ('walk', 'walk', 2, (0, 1), False),  # walk: station __walk_star_2
    ('walk', 'walk', 1, (0,), False),  # walk: station
)

STATES: tuple[dict[str, int], ...] = (
    {'$END': -165, 'ALLOW': 1, 'AMPLIFIER': 2, 'CHOICE': 3, 'COUPLING': 4, 'DESIGN': 5, 'DRIVER': 6, 'EXPECT': 7, 'FIT': 8, 'INCLUDE': 9, 'INPUT': 10, 'KIND': 11, 'LEG': 12, 'LET': 13, 'LIMIT': 14, 'LPAR': 15, 'NAME': 16, 'NETWORK': 17, 'OMIT': 18, 'PAD': 19, 'POSITION': 20, 'POSTS': 21, 'SET': 22, 'TESTPOINT': 23, 'USE': 24, 'VARIANT': 25, '_NL': 26, '__start_star_0': 27, 'allow': 28, 'amplifier': 29, 'choice': 30, 'coupling': 31, 'design': 32, 'driver': 33, 'entry': 34, 'expect': 35, 'fit': 36, 'group': 37, 'include': 38, 'input': 39, 'leg': 40, 'let': 41, 'limit': 42, 'network': 43, 'omit': 44, 'part': 45, 'path': 46, 'position': 47, 'posts': 48, 'set': 49, 'start': 50, 'station': 51, 'testpoint': 52, 'use': 53, 'variant': 54, 'walk': 55},
    {'FINDING': 56},
    {'CODE': 57, 'COMMA_NUMBER': 58, 'LPAR': 59, 'MINUS': 60, 'NAME': 61, 'NUMBER': 62, 'atom': 63, 'expr': 64, 'power': 65, 'product': 66, 'sum': 67, 'unary': 68},
    {'NAME': 69},
    {'NAME': 16, 'path': 70},
    {'STRING': 71},
    {'NAME': 72},
    {'NAME': 73},
    {'NAME': 16, 'path': 74},
    {'STRING': 75},
    {'NAME': 76},
    {'NAME': 77},
    {'NAME': 78},
    {'NAME': 79},
    {'FINDING': 80},
    {'LPAR': 15, 'NAME': 16, 'PAD': 19, '_NL': 81, 'chain': 82, 'group': 37, 'path': 46, 'station': 83},
    {'ABOVE': -152, 'AND': -152, 'ARROW': -152, 'AT': -152, 'BECAUSE': -152, 'BELOW': -152, 'CODE': -152, 'COMMA': -152, 'COMMA_NUMBER': -152, 'DOT': 84, 'EQUAL': -152, 'FROM': -152, 'IN': -152, 'LPAR': -152, 'MINUS': -152, 'NAME': -152, 'NUMBER': -152, 'RBRACE': -152, 'RPAR': -152, 'VBAR': -152, 'WITHIN': -152, '_NL': -152, '__path_star_10': 85},
    {'NAME': 86},
    {'NAME': 16, 'path': 87},
    {'ARROW': -166, 'COMMA': -166, 'RBRACE': -166, 'RPAR': -166, 'VBAR': -166, '_NL': -166},
    {'NAME': 88},
    {'NAME': 89},
    {'NAME': 16, 'path': 90},
    {'NAME': 91},
    {'NAME': 92},
    {'NAME': 93},
    {'$END': -163, 'ALLOW': 1, 'AMPLIFIER': 2, 'CHOICE': 3, 'COUPLING': 4, 'DESIGN': 5, 'DRIVER': 6, 'EXPECT': 7, 'FIT': 8, 'INCLUDE': 9, 'INPUT': 10, 'KIND': 11, 'LEG': 12, 'LET': 13, 'LIMIT': 14, 'LPAR': 15, 'NAME': 16, 'NETWORK': 17, 'OMIT': 18, 'PAD': 19, 'POSITION': 20, 'POSTS': 21, 'SET': 22, 'TESTPOINT': 23, 'USE': 24, 'VARIANT': 25, '__start_star_0': 94, 'allow': 28, 'amplifier': 29, 'choice': 30, 'coupling': 31, 'design': 32, 'driver': 33, 'entry': 34, 'expect': 35, 'fit': 36, 'group': 37, 'include': 38, 'input': 39, 'leg': 40, 'let': 41, 'limit': 42, 'network': 43, 'omit': 44, 'part': 45, 'path': 46, 'position': 47, 'posts': 48, 'set': 49, 'station': 51, 'testpoint': 52, 'use': 53, 'variant': 54, 'walk': 55},
    {'$END': -164, 'ALLOW': 1, 'AMPLIFIER': 2, 'CHOICE': 3, 'COUPLING': 4, 'DESIGN': 5, 'DRIVER': 6, 'EXPECT': 7, 'FIT': 8, 'INCLUDE': 9, 'INPUT': 10, 'KIND': 11, 'LEG': 12, 'LET': 13, 'LIMIT': 14, 'LPAR': 15, 'NAME': 16, 'NETWORK': 17, 'OMIT': 18, 'PAD': 19, 'POSITION': 20, 'POSTS': 21, 'SET': 22, 'TESTPOINT': 23, 'USE': 24, 'VARIANT': 25, 'allow': 28, 'amplifier': 29, 'choice': 30, 'coupling': 31, 'design': 32, 'driver': 33, 'entry': 95, 'expect': 35, 'fit': 36, 'group': 37, 'include': 38, 'input': 39, 'leg': 40, 'let': 41, 'limit': 42, 'network': 43, 'omit': 44, 'part': 45, 'path': 46, 'position': 47, 'posts': 48, 'set': 49, 'station': 51, 'testpoint': 52, 'use': 53, 'variant': 54, 'walk': 55},
    {'COMMA': -99, 'RBRACE': -99, '_NL': -99},
    {'COMMA': -79, 'RBRACE': -79, '_NL': -79},
    {'COMMA': -95, 'RBRACE': -95, '_NL': -95},
    {'COMMA': -84, 'RBRACE': -84, '_NL': -84},
    {'COMMA': -78, 'RBRACE': -78, '_NL': -78},
    {'COMMA': -82, 'RBRACE': -82, '_NL': -82},
    {'_NL': 96},
    {'COMMA': -98, 'RBRACE': -98, '_NL': -98},
    {'COMMA': -92, 'RBRACE': -92, '_NL': -92},
    {'ARROW': -168, 'COMMA': -168, 'RBRACE': -168, 'RPAR': -168, 'VBAR': -168, '_NL': -168},
    {'COMMA': -97, 'RBRACE': -97, '_NL': -97},
    {'COMMA': -80, 'RBRACE': -80, '_NL': -80},
    {'COMMA': -88, 'RBRACE': -88, '_NL': -88},
    {'COMMA': -85, 'RBRACE': -85, '_NL': -85},
    {'COMMA': -100, 'RBRACE': -100, '_NL': -100},
    {'COMMA': -86, 'RBRACE': -86, '_NL': -86},
    {'COMMA': -91, 'RBRACE': -91, '_NL': -91},
    {'COMMA': -83, 'RBRACE': -83, '_NL': -83},
    {'ARROW': -167, 'COMMA': -167, 'RBRACE': -167, 'RPAR': -167, 'VBAR': -167, '_NL': -167},
    {'COMMA': -96, 'RBRACE': -96, '_NL': -96},
    {'COMMA': -81, 'RBRACE': -81, '_NL': -81},
    {'COMMA': -93, 'RBRACE': -93, '_NL': -93},
    {},
    {'ARROW': 97, 'COMMA': -180, 'RBRACE': -180, '_NL': -180, '__walk_star_2': 98},
    {'COMMA': -90, 'RBRACE': -90, '_NL': -90},
    {'COMMA': -87, 'RBRACE': -87, '_NL': -87},
    {'COMMA': -94, 'RBRACE': -94, '_NL': -94},
    {'COMMA': -89, 'RBRACE': -89, '_NL': -89},
    {'BECAUSE': 99, 'IN': 100, 'ON': 101, 'in_variants': 102},
    {'ABOVE': -44, 'AT': -44, 'BELOW': -44, 'CIRCUMFLEX': -44, 'COMMA': -44, 'FROM': -44, 'INTO': -44, 'LBRACE': -44, 'MINUS': -44, 'PLUS': -44, 'RBRACE': -44, 'RPAR': -44, 'SLASH': -44, 'STAR': -44, 'TO': -44, 'WITHIN': -44, '_NL': -44},
    {'ABOVE': -43, 'AT': -43, 'BELOW': -43, 'CIRCUMFLEX': -43, 'COMMA': -43, 'FROM': -43, 'INTO': -43, 'LBRACE': -43, 'MINUS': -43, 'NAME': 103, 'PERCENT': 104, 'PLUS': -43, 'RBRACE': -43, 'RPAR': -43, 'SLASH': -43, 'STAR': -43, 'TO': -43, 'WITHIN': -43, '_NL': -43},
    {'CODE': 57, 'COMMA_NUMBER': 58, 'LPAR': 59, 'MINUS': 60, 'NAME': 61, 'NUMBER': 62, 'atom': 63, 'expr': 105, 'power': 65, 'product': 66, 'sum': 67, 'unary': 68},
    {'CODE': 57, 'COMMA_NUMBER': 58, 'LPAR': 59, 'MINUS': 60, 'NAME': 61, 'NUMBER': 62, 'atom': 63, 'unary': 106},
    {'ABOVE': -45, 'AT': -45, 'BELOW': -45, 'CIRCUMFLEX': -45, 'COMMA': -45, 'FROM': -45, 'INTO': -45, 'LBRACE': -45, 'MINUS': -45, 'PLUS': -45, 'RBRACE': -45, 'RPAR': -45, 'SLASH': -45, 'STAR': -45, 'TO': -45, 'WITHIN': -45, '_NL': -45},
    {'ABOVE': -40, 'AT': -40, 'BELOW': -40, 'CIRCUMFLEX': -40, 'COMMA': -40, 'FROM': -40, 'INTO': -40, 'LBRACE': -40, 'MINUS': -40, 'NAME': 107, 'PERCENT': 108, 'PLUS': -40, 'RBRACE': -40, 'RPAR': -40, 'SLASH': -40, 'STAR': -40, 'TO': -40, 'WITHIN': -40, '_NL': -40},
    {'ABOVE': -173, 'AT': -173, 'BELOW': -173, 'CIRCUMFLEX': -173, 'COMMA': -173, 'FROM': -173, 'INTO': -173, 'LBRACE': -173, 'MINUS': -173, 'PLUS': -173, 'RBRACE': -173, 'RPAR': -173, 'SLASH': -173, 'STAR': -173, 'TO': -173, 'WITHIN': -173, '_NL': -173},
    {'INTO': 109},
    {'ABOVE': -158, 'AT': -158, 'BELOW': -158, 'COMMA': -158, 'FROM': -158, 'INTO': -158, 'LBRACE': -158, 'MINUS': -158, 'PLUS': -158, 'RBRACE': -158, 'RPAR': -158, 'SLASH': -158, 'STAR': -158, 'TO': -158, 'WITHIN': -158, '_NL': -158},
    {'ABOVE': -169, 'AT': -169, 'BELOW': -169, 'COMMA': -169, 'FROM': -169, 'INTO': -169, 'LBRACE': -169, 'MINUS': -169, 'PLUS': -169, 'RBRACE': -169, 'RPAR': -169, 'SLASH': 110, 'STAR': 111, 'TO': -169, 'WITHIN': -169, '_NL': -169},
    {'ABOVE': -113, 'AT': -113, 'BELOW': -113, 'COMMA': -113, 'FROM': -113, 'INTO': -113, 'LBRACE': -113, 'MINUS': 112, 'PLUS': 113, 'RBRACE': -113, 'RPAR': -113, 'TO': -113, 'WITHIN': -113, '_NL': -113},
    {'ABOVE': -156, 'AT': -156, 'BELOW': -156, 'CIRCUMFLEX': 114, 'COMMA': -156, 'FROM': -156, 'INTO': -156, 'LBRACE': -156, 'MINUS': -156, 'PLUS': -156, 'RBRACE': -156, 'RPAR': -156, 'SLASH': -156, 'STAR': -156, 'TO': -156, 'WITHIN': -156, '_NL': -156},
    {'LBRACE': 115, 'STRING': 116, 'body': 117},
    {'AND': 118},
    {'COMMA': -73, 'RBRACE': -73, '_NL': -73},
    {'CODE': 57, 'COMMA': -77, 'COMMA_NUMBER': 58, 'LBRACE': 119, 'LPAR': 59, 'MINUS': 60, 'NAME': 61, 'NUMBER': 62, 'RBRACE': -77, '_NL': -77, 'atom': 63, 'block': 120, 'expr': 121, 'power': 65, 'product': 66, 'sum': 67, 'unary': 68},
    {'ABOVE': 122, 'AT': 123, 'BELOW': 124, 'CODE': 57, 'COMMA': -112, 'COMMA_NUMBER': 58, 'FROM': 125, 'LPAR': 59, 'MINUS': 60, 'NAME': 61, 'NUMBER': 62, 'OF': 126, 'RBRACE': -112, 'WITHIN': 127, '_NL': -112, '__expect_star_7': 128, 'atom': 63, 'clause': 129, 'expr': 130, 'is': 131, 'power': 65, 'product': 66, 'sum': 67, 'unary': 68},
    {'AND': 132, 'COMMA': -115, 'RBRACE': -115, '_NL': -115, '__omit_star_6': 133},
    {'COMMA': -129, 'FROM': 134, 'RBRACE': -129, '_NL': -129},
    {'COMMA': -130, 'RBRACE': -130, '_NL': -130},
    {'CODE': 57, 'COMMA': -150, 'COMMA_NUMBER': 58, 'LBRACE': 119, 'LPAR': 59, 'MINUS': 60, 'NAME': 61, 'NUMBER': 62, 'RBRACE': -150, '_NL': -150, 'atom': 63, 'block': 135, 'expr': 136, 'power': 65, 'product': 66, 'sum': 67, 'unary': 68},
    {'AND': 137, 'LBRACE': 115, '__leg_star_1': 138, 'body': 139},
    {'EQUAL': 140},
    {'CODE': 57, 'COMMA_NUMBER': 58, 'LPAR': 59, 'MINUS': 60, 'NAME': 61, 'NUMBER': 62, 'atom': 63, 'expr': 141, 'power': 65, 'product': 66, 'sum': 67, 'unary': 68},
    {'LPAR': 15, 'NAME': 16, 'PAD': 19, 'chain': 142, 'group': 37, 'path': 46, 'station': 83},
    {'RPAR': 143, 'VBAR': 144, '_NL': 145, '__group_star_3': 146},
    {'ARROW': 97, 'RPAR': -64, 'VBAR': -64, '_NL': -64, '__walk_star_2': 147},
    {'NAME': 148},
    {'ABOVE': -151, 'AND': -151, 'ARROW': -151, 'AT': -151, 'BECAUSE': -151, 'BELOW': -151, 'CODE': -151, 'COMMA': -151, 'COMMA_NUMBER': -151, 'DOT': 149, 'EQUAL': -151, 'FROM': -151, 'IN': -151, 'LPAR': -151, 'MINUS': -151, 'NAME': -151, 'NUMBER': -151, 'RBRACE': -151, 'RPAR': -151, 'VBAR': -151, 'WITHIN': -151, '_NL': -151},
    {'LPAR': 150},
    {'AND': 132, 'COMMA': -144, 'RBRACE': -144, '_NL': -144, '__omit_star_6': 151},
    {'LBRACE': 115, 'STRING': 152, 'body': 153},
    {'COMMA': -155, 'RBRACE': -155, '_NL': -155},
    {'EQUAL': 154},
    {'COMMA': -172, 'RBRACE': -172, '_NL': -172},
    {'AS': 155},
    {'LBRACE': 115, 'STRING': 156, 'body': 157},
    {'$END': -162, 'ALLOW': 1, 'AMPLIFIER': 2, 'CHOICE': 3, 'COUPLING': 4, 'DESIGN': 5, 'DRIVER': 6, 'EXPECT': 7, 'FIT': 8, 'INCLUDE': 9, 'INPUT': 10, 'KIND': 11, 'LEG': 12, 'LET': 13, 'LIMIT': 14, 'LPAR': 15, 'NAME': 16, 'NETWORK': 17, 'OMIT': 18, 'PAD': 19, 'POSITION': 20, 'POSTS': 21, 'SET': 22, 'TESTPOINT': 23, 'USE': 24, 'VARIANT': 25, 'allow': 28, 'amplifier': 29, 'choice': 30, 'coupling': 31, 'design': 32, 'driver': 33, 'entry': 95, 'expect': 35, 'fit': 36, 'group': 37, 'include': 38, 'input': 39, 'leg': 40, 'let': 41, 'limit': 42, 'network': 43, 'omit': 44, 'part': 45, 'path': 46, 'position': 47, 'posts': 48, 'set': 49, 'station': 51, 'testpoint': 52, 'use': 53, 'variant': 54, 'walk': 55},
    {'_NL': 158},
    {'$END': -25, 'ALLOW': -25, 'AMPLIFIER': -25, 'CHOICE': -25, 'COUPLING': -25, 'DESIGN': -25, 'DRIVER': -25, 'EXPECT': -25, 'FIT': -25, 'INCLUDE': -25, 'INPUT': -25, 'KIND': -25, 'LEG': -25, 'LET': -25, 'LIMIT': -25, 'LPAR': -25, 'NAME': -25, 'NETWORK': -25, 'OMIT': -25, 'PAD': -25, 'POSITION': -25, 'POSTS': -25, 'SET': -25, 'TESTPOINT': -25, 'USE': -25, 'VARIANT': -25},
    {'LPAR': 15, 'NAME': 16, 'PAD': 19, 'group': 37, 'path': 46, 'station': 159},
    {'ARROW': 160, 'COMMA': -179, 'RBRACE': -179, '_NL': -179},
    {'STRING': 161},
    {'NAME': 16, 'path': 162},
    {'NAME': 16, 'path': 163},
    {'BECAUSE': 164},
    {'ABOVE': -41, 'AT': -41, 'BELOW': -41, 'CIRCUMFLEX': -41, 'COMMA': -41, 'FROM': -41, 'INTO': -41, 'LBRACE': -41, 'MINUS': -41, 'PLUS': -41, 'RBRACE': -41, 'RPAR': -41, 'SLASH': -41, 'STAR': -41, 'TO': -41, 'WITHIN': -41, '_NL': -41},
    {'ABOVE': -42, 'AT': -42, 'BELOW': -42, 'CIRCUMFLEX': -42, 'COMMA': -42, 'FROM': -42, 'INTO': -42, 'LBRACE': -42, 'MINUS': -42, 'PLUS': -42, 'RBRACE': -42, 'RPAR': -42, 'SLASH': -42, 'STAR': -42, 'TO': -42, 'WITHIN': -42, '_NL': -42},
    {'RPAR': 165},
    {'ABOVE': -174, 'AT': -174, 'BELOW': -174, 'CIRCUMFLEX': -174, 'COMMA': -174, 'FROM': -174, 'INTO': -174, 'LBRACE': -174, 'MINUS': -174, 'PLUS': -174, 'RBRACE': -174, 'RPAR': -174, 'SLASH': -174, 'STAR': -174, 'TO': -174, 'WITHIN': -174, '_NL': -174},
    {'ABOVE': -38, 'AT': -38, 'BELOW': -38, 'CIRCUMFLEX': -38, 'COMMA': -38, 'FROM': -38, 'INTO': -38, 'LBRACE': -38, 'MINUS': -38, 'PLUS': -38, 'RBRACE': -38, 'RPAR': -38, 'SLASH': -38, 'STAR': -38, 'TO': -38, 'WITHIN': -38, '_NL': -38},
    {'ABOVE': -39, 'AT': -39, 'BELOW': -39, 'CIRCUMFLEX': -39, 'COMMA': -39, 'FROM': -39, 'INTO': -39, 'LBRACE': -39, 'MINUS': -39, 'PLUS': -39, 'RBRACE': -39, 'RPAR': -39, 'SLASH': -39, 'STAR': -39, 'TO': -39, 'WITHIN': -39, '_NL': -39},
    {'CODE': 57, 'COMMA_NUMBER': 58, 'LPAR': 59, 'MINUS': 60, 'NAME': 61, 'NUMBER': 62, 'atom': 63, 'expr': 166, 'power': 65, 'product': 66, 'sum': 67, 'unary': 68},
    {'CODE': 57, 'COMMA_NUMBER': 58, 'LPAR': 59, 'MINUS': 60, 'NAME': 61, 'NUMBER': 62, 'atom': 63, 'power': 167, 'unary': 68},
    {'CODE': 57, 'COMMA_NUMBER': 58, 'LPAR': 59, 'MINUS': 60, 'NAME': 61, 'NUMBER': 62, 'atom': 63, 'power': 168, 'unary': 68},
    {'CODE': 57, 'COMMA_NUMBER': 58, 'LPAR': 59, 'MINUS': 60, 'NAME': 61, 'NUMBER': 62, 'atom': 63, 'power': 65, 'product': 169, 'unary': 68},
    {'CODE': 57, 'COMMA_NUMBER': 58, 'LPAR': 59, 'MINUS': 60, 'NAME': 61, 'NUMBER': 62, 'atom': 63, 'power': 65, 'product': 170, 'unary': 68},
    {'CODE': 57, 'COMMA_NUMBER': 58, 'LPAR': 59, 'MINUS': 60, 'NAME': 61, 'NUMBER': 62, 'atom': 63, 'power': 171, 'unary': 68},
    {'ALLOW': 1, 'AMPLIFIER': 2, 'CHOICE': 3, 'COUPLING': 4, 'DESIGN': 5, 'DRIVER': 6, 'EXPECT': 7, 'FIT': 8, 'INCLUDE': 9, 'INPUT': 10, 'KIND': 11, 'LEG': 12, 'LET': 13, 'LIMIT': 14, 'LPAR': 15, 'NAME': 16, 'NETWORK': 17, 'OMIT': 18, 'PAD': 19, 'POSITION': 20, 'POSTS': 21, 'RBRACE': 172, 'SET': 22, 'TESTPOINT': 23, 'USE': 24, 'VARIANT': 25, '_NL': 173, '__body_star_8': 174, 'allow': 28, 'amplifier': 29, 'choice': 30, 'coupling': 31, 'design': 32, 'driver': 33, 'entry': 175, 'expect': 35, 'fit': 36, 'group': 37, 'include': 38, 'input': 39, 'leg': 40, 'let': 41, 'limit': 42, 'network': 43, 'omit': 44, 'part': 45, 'path': 46, 'position': 47, 'posts': 48, 'set': 49, 'station': 51, 'testpoint': 52, 'use': 53, 'variant': 54, 'walk': 55},
    {'LBRACE': 115, 'body': 176},
    {'COMMA': -66, 'RBRACE': -66, '_NL': -66},
    {'NAME': 16, 'path': 177},
    {'CODE': 57, 'COMMA_NUMBER': 58, 'LPAR': 59, 'MINUS': 60, 'NAME': 178, 'NUMBER': 62, 'RBRACE': 179, '_NL': 180, '__block_star_9': 181, 'atom': 63, 'expr': 182, 'item': 183, 'power': 65, 'product': 66, 'sum': 67, 'unary': 68},
    {'COMMA': -76, 'RBRACE': -76, '_NL': -76},
    {'COMMA': -75, 'LBRACE': 119, 'RBRACE': -75, '_NL': -75, 'block': 184},
    {'CODE': 57, 'COMMA_NUMBER': 58, 'LPAR': 59, 'MINUS': 60, 'NAME': 61, 'NUMBER': 62, 'atom': 63, 'expr': 185, 'power': 65, 'product': 66, 'sum': 67, 'unary': 68},
    {'CODE': 57, 'COMMA_NUMBER': 58, 'LPAR': 59, 'MINUS': 60, 'NAME': 61, 'NUMBER': 62, 'atom': 63, 'expr': 186, 'power': 65, 'product': 66, 'sum': 67, 'unary': 68},
    {'CODE': 57, 'COMMA_NUMBER': 58, 'LPAR': 59, 'MINUS': 60, 'NAME': 61, 'NUMBER': 62, 'atom': 63, 'expr': 187, 'power': 65, 'product': 66, 'sum': 67, 'unary': 68},
    {'CODE': 57, 'COMMA_NUMBER': 58, 'LPAR': 59, 'MINUS': 60, 'NAME': 61, 'NUMBER': 62, 'atom': 63, 'expr': 188, 'power': 65, 'product': 66, 'sum': 67, 'unary': 68},
    {'NAME': 16, 'path': 189},
    {'CODE': 57, 'COMMA_NUMBER': 58, 'LPAR': 59, 'MINUS': 60, 'NAME': 61, 'NUMBER': 62, 'atom': 63, 'expr': 190, 'power': 65, 'product': 66, 'sum': 67, 'unary': 68},
    {'ABOVE': 122, 'AT': 123, 'BELOW': 124, 'COMMA': -111, 'FROM': 125, 'RBRACE': -111, 'WITHIN': 127, '_NL': -111, 'clause': 191},
    {'ABOVE': -5, 'AT': -5, 'BELOW': -5, 'COMMA': -5, 'FROM': -5, 'RBRACE': -5, 'WITHIN': -5, '_NL': -5},
    {'ABOVE': -131, 'AT': -131, 'BELOW': -131, 'COMMA': -131, 'FROM': -131, 'RBRACE': -131, 'WITHIN': -131, '_NL': -131},
    {'ABOVE': 122, 'AT': 123, 'BELOW': 124, 'COMMA': -110, 'FROM': 125, 'RBRACE': -110, 'WITHIN': 127, '_NL': -110, '__expect_star_7': 192, 'clause': 129},
    {'NAME': 16, 'path': 193},
    {'AND': 194, 'COMMA': -114, 'RBRACE': -114, '_NL': -114},
    {'LIBRARY': 195},
    {'COMMA': -149, 'RBRACE': -149, '_NL': -149},
    {'COMMA': -148, 'LBRACE': 119, 'RBRACE': -148, '_NL': -148, 'block': 196},
    {'NAME': 197},
    {'AND': 198, 'LBRACE': 115, 'body': 199},
    {'COMMA': -136, 'RBRACE': -136, '_NL': -136},
    {'CODE': 57, 'COMMA_NUMBER': 58, 'LPAR': 59, 'MINUS': 60, 'NAME': 61, 'NUMBER': 62, 'atom': 63, 'expr': 200, 'power': 65, 'product': 66, 'sum': 67, 'unary': 68},
    {'COMMA': -138, 'RBRACE': -138, '_NL': -138},
    {'RPAR': 201, 'VBAR': 144, '_NL': 202, '__group_star_3': 203},
    {'ARROW': -125, 'COMMA': -125, 'RBRACE': -125, 'RPAR': -125, 'VBAR': -125, '_NL': -125},
    {'LPAR': 15, 'NAME': 16, 'PAD': 19, '_NL': 204, 'chain': 205, 'group': 37, 'path': 46, 'station': 83},
    {'RPAR': 206, 'VBAR': 207},
    {'RPAR': 208, 'VBAR': 209, '_NL': 210},
    {'ARROW': 160, 'RPAR': -63, 'VBAR': -63, '_NL': -63},
    {'ABOVE': -23, 'AND': -23, 'ARROW': -23, 'AT': -23, 'BECAUSE': -23, 'BELOW': -23, 'CODE': -23, 'COMMA': -23, 'COMMA_NUMBER': -23, 'DOT': -23, 'EQUAL': -23, 'FROM': -23, 'IN': -23, 'LPAR': -23, 'MINUS': -23, 'NAME': -23, 'NUMBER': -23, 'RBRACE': -23, 'RPAR': -23, 'VBAR': -23, 'WITHIN': -23, '_NL': -23},
    {'NAME': 211},
    {'NAME': 212},
    {'AND': 194, 'COMMA': -143, 'RBRACE': -143, '_NL': -143},
    {'LBRACE': 115, 'body': 213},
    {'COMMA': -154, 'RBRACE': -154, '_NL': -154},
    {'CODE': 57, 'COMMA_NUMBER': 58, 'LPAR': 59, 'MINUS': 60, 'NAME': 61, 'NUMBER': 62, 'atom': 63, 'expr': 214, 'power': 65, 'product': 66, 'sum': 67, 'unary': 68},
    {'NAME': 215},
    {'LBRACE': 115, 'body': 216},
    {'COMMA': -178, 'RBRACE': -178, '_NL': -178},
    {'$END': -26, 'ALLOW': -26, 'AMPLIFIER': -26, 'CHOICE': -26, 'COUPLING': -26, 'DESIGN': -26, 'DRIVER': -26, 'EXPECT': -26, 'FIT': -26, 'INCLUDE': -26, 'INPUT': -26, 'KIND': -26, 'LEG': -26, 'LET': -26, 'LIMIT': -26, 'LPAR': -26, 'NAME': -26, 'NETWORK': -26, 'OMIT': -26, 'PAD': -26, 'POSITION': -26, 'POSTS': -26, 'SET': -26, 'TESTPOINT': -26, 'USE': -26, 'VARIANT': -26},
    {'ARROW': -27, 'COMMA': -27, 'RBRACE': -27, 'RPAR': -27, 'VBAR': -27, '_NL': -27},
    {'LPAR': 15, 'NAME': 16, 'PAD': 19, 'group': 37, 'path': 46, 'station': 217},
    {'COMMA': -35, 'RBRACE': -35, '_NL': -35},
    {'AND': 132, 'BECAUSE': -127, '__omit_star_6': 218},
    {'BECAUSE': 219, 'IN': 100, 'in_variants': 220},
    {'STRING': 221},
    {'ABOVE': -46, 'AT': -46, 'BELOW': -46, 'CIRCUMFLEX': -46, 'COMMA': -46, 'FROM': -46, 'INTO': -46, 'LBRACE': -46, 'MINUS': -46, 'PLUS': -46, 'RBRACE': -46, 'RPAR': -46, 'SLASH': -46, 'STAR': -46, 'TO': -46, 'WITHIN': -46, '_NL': -46},
    {'COMMA': -37, 'LBRACE': 119, 'RBRACE': -37, '_NL': -37, 'block': 222},
    {'ABOVE': -160, 'AT': -160, 'BELOW': -160, 'COMMA': -160, 'FROM': -160, 'INTO': -160, 'LBRACE': -160, 'MINUS': -160, 'PLUS': -160, 'RBRACE': -160, 'RPAR': -160, 'SLASH': -160, 'STAR': -160, 'TO': -160, 'WITHIN': -160, '_NL': -160},
    {'ABOVE': -159, 'AT': -159, 'BELOW': -159, 'COMMA': -159, 'FROM': -159, 'INTO': -159, 'LBRACE': -159, 'MINUS': -159, 'PLUS': -159, 'RBRACE': -159, 'RPAR': -159, 'SLASH': -159, 'STAR': -159, 'TO': -159, 'WITHIN': -159, '_NL': -159},
    {'ABOVE': -171, 'AT': -171, 'BELOW': -171, 'COMMA': -171, 'FROM': -171, 'INTO': -171, 'LBRACE': -171, 'MINUS': -171, 'PLUS': -171, 'RBRACE': -171, 'RPAR': -171, 'SLASH': 110, 'STAR': 111, 'TO': -171, 'WITHIN': -171, '_NL': -171},
    {'ABOVE': -170, 'AT': -170, 'BELOW': -170, 'COMMA': -170, 'FROM': -170, 'INTO': -170, 'LBRACE': -170, 'MINUS': -170, 'PLUS': -170, 'RBRACE': -170, 'RPAR': -170, 'SLASH': 110, 'STAR': 111, 'TO': -170, 'WITHIN': -170, '_NL': -170},
    {'ABOVE': -157, 'AT': -157, 'BELOW': -157, 'COMMA': -157, 'FROM': -157, 'INTO': -157, 'LBRACE': -157, 'MINUS': -157, 'PLUS': -157, 'RBRACE': -157, 'RPAR': -157, 'SLASH': -157, 'STAR': -157, 'TO': -157, 'WITHIN': -157, '_NL': -157},
    {'COMMA': -62, 'RBRACE': -62, '_NL': -62},
    {'ALLOW': 1, 'AMPLIFIER': 2, 'CHOICE': 3, 'COUPLING': 4, 'DESIGN': 5, 'DRIVER': 6, 'EXPECT': 7, 'FIT': 8, 'INCLUDE': 9, 'INPUT': 10, 'KIND': 11, 'LEG': 12, 'LET': 13, 'LIMIT': 14, 'LPAR': 15, 'NAME': 16, 'NETWORK': 17, 'OMIT': 18, 'PAD': 19, 'POSITION': 20, 'POSTS': 21, 'RBRACE': 223, 'SET': 22, 'TESTPOINT': 23, 'USE': 24, 'VARIANT': 25, '__body_star_8': 224, 'allow': 28, 'amplifier': 29, 'choice': 30, 'coupling': 31, 'design': 32, 'driver': 33, 'entry': 225, 'expect': 35, 'fit': 36, 'group': 37, 'include': 38, 'input': 39, 'leg': 40, 'let': 41, 'limit': 42, 'network': 43, 'omit': 44, 'part': 45, 'path': 46, 'position': 47, 'posts': 48, 'set': 49, 'station': 51, 'testpoint': 52, 'use': 53, 'variant': 54, 'walk': 55},
    {'ALLOW': 1, 'AMPLIFIER': 2, 'CHOICE': 3, 'COUPLING': 4, 'DESIGN': 5, 'DRIVER': 6, 'EXPECT': 7, 'FIT': 8, 'INCLUDE': 9, 'INPUT': 10, 'KIND': 11, 'LEG': 12, 'LET': 13, 'LIMIT': 14, 'LPAR': 15, 'NAME': 16, 'NETWORK': 17, 'OMIT': 18, 'PAD': 19, 'POSITION': 20, 'POSTS': 21, 'RBRACE': 226, 'SET': 22, 'TESTPOINT': 23, 'USE': 24, 'VARIANT': 25, 'allow': 28, 'amplifier': 29, 'choice': 30, 'coupling': 31, 'design': 32, 'driver': 33, 'entry': 227, 'expect': 35, 'fit': 36, 'group': 37, 'include': 38, 'input': 39, 'leg': 40, 'let': 41, 'limit': 42, 'network': 43, 'omit': 44, 'part': 45, 'path': 46, 'position': 47, 'posts': 48, 'set': 49, 'station': 51, 'testpoint': 52, 'use': 53, 'variant': 54, 'walk': 55},
    {'COMMA': 228, 'RBRACE': 229, '_NL': 230, '_sep': 231},
    {'COMMA': -65, 'RBRACE': -65, '_NL': -65},
    {'CODE': 57, 'COMMA_NUMBER': 58, 'LPAR': 59, 'MINUS': 60, 'NAME': 61, 'NUMBER': 62, 'atom': 63, 'expr': 232, 'power': 65, 'product': 66, 'sum': 67, 'unary': 68},
    {'CIRCUMFLEX': -45, 'CODE': 57, 'COMMA': -45, 'COMMA_NUMBER': 58, 'LPAR': 59, 'MINUS': 60, 'NAME': 61, 'NUMBER': 62, 'PLUS': -45, 'RBRACE': -45, 'SLASH': -45, 'STAR': -45, 'STRING': 233, '_NL': -45, 'atom': 63, 'expr': 234, 'power': 65, 'product': 66, 'sum': 67, 'unary': 68},
    {'COMMA': -54, 'RBRACE': -54, '_NL': -54},
    {'CODE': 57, 'COMMA_NUMBER': 58, 'LPAR': 59, 'MINUS': 60, 'NAME': 178, 'NUMBER': 62, 'RBRACE': 235, '__block_star_9': 236, 'atom': 63, 'expr': 182, 'item': 237, 'power': 65, 'product': 66, 'sum': 67, 'unary': 68},
    {'CODE': 57, 'COMMA_NUMBER': 58, 'LPAR': 59, 'MINUS': 60, 'NAME': 178, 'NUMBER': 62, 'RBRACE': 238, 'atom': 63, 'expr': 182, 'item': 239, 'power': 65, 'product': 66, 'sum': 67, 'unary': 68},
    {'COMMA': -132, 'RBRACE': -132, '_NL': -132},
    {'COMMA': 228, 'RBRACE': 240, '_NL': 230, '_sep': 241},
    {'COMMA': -74, 'RBRACE': -74, '_NL': -74},
    {'ABOVE': -69, 'AT': -69, 'BELOW': -69, 'COMMA': -69, 'FROM': -69, 'RBRACE': -69, 'WITHIN': -69, '_NL': -69},
    {'ABOVE': -67, 'AT': -67, 'BELOW': -67, 'COMMA': -67, 'FROM': -67, 'RBRACE': -67, 'WITHIN': -67, '_NL': -67},
    {'ABOVE': -70, 'AT': -70, 'BELOW': -70, 'COMMA': -70, 'FROM': -70, 'RBRACE': -70, 'WITHIN': -70, '_NL': -70},
    {'TO': 242},
    {'ABOVE': 122, 'AND': 132, 'AT': 123, 'BELOW': 124, 'CODE': 57, 'COMMA': -108, 'COMMA_NUMBER': 58, 'FROM': 125, 'LPAR': 59, 'MINUS': 60, 'NAME': 61, 'NUMBER': 62, 'RBRACE': -108, 'WITHIN': 127, '_NL': -108, '__expect_star_7': 243, '__omit_star_6': 244, 'atom': 63, 'clause': 129, 'expr': 130, 'is': 245, 'power': 65, 'product': 66, 'sum': 67, 'unary': 68},
    {'ABOVE': -68, 'AT': -68, 'BELOW': -68, 'COMMA': -68, 'FROM': -68, 'RBRACE': -68, 'WITHIN': -68, '_NL': -68},
    {'ABOVE': -6, 'AT': -6, 'BELOW': -6, 'COMMA': -6, 'FROM': -6, 'RBRACE': -6, 'WITHIN': -6, '_NL': -6},
    {'ABOVE': 122, 'AT': 123, 'BELOW': 124, 'COMMA': -109, 'FROM': 125, 'RBRACE': -109, 'WITHIN': 127, '_NL': -109, 'clause': 191},
    {'ABOVE': -21, 'AND': -21, 'AT': -21, 'BECAUSE': -21, 'BELOW': -21, 'CODE': -21, 'COMMA': -21, 'COMMA_NUMBER': -21, 'FROM': -21, 'LPAR': -21, 'MINUS': -21, 'NAME': -21, 'NUMBER': -21, 'RBRACE': -21, 'WITHIN': -21, '_NL': -21},
    {'NAME': 16, 'path': 246},
    {'COMMA': -128, 'RBRACE': -128, '_NL': -128},
    {'COMMA': -147, 'RBRACE': -147, '_NL': -147},
    {'AND': -17, 'LBRACE': -17},
    {'NAME': 247},
    {'COMMA': -135, 'RBRACE': -135, '_NL': -135},
    {'COMMA': -137, 'RBRACE': -137, '_NL': -137},
    {'ARROW': -121, 'COMMA': -121, 'RBRACE': -121, 'RPAR': -121, 'VBAR': -121, '_NL': -121},
    {'RPAR': 248, 'VBAR': 207},
    {'RPAR': 249, 'VBAR': 209, '_NL': 250},
    {'LPAR': 15, 'NAME': 16, 'PAD': 19, 'chain': 251, 'group': 37, 'path': 46, 'station': 83},
    {'RPAR': -12, 'VBAR': -12, '_NL': -12},
    {'ARROW': -124, 'COMMA': -124, 'RBRACE': -124, 'RPAR': -124, 'VBAR': -124, '_NL': -124},
    {'LPAR': 15, 'NAME': 16, 'PAD': 19, '_NL': 252, 'chain': 253, 'group': 37, 'path': 46, 'station': 83},
    {'ARROW': -123, 'COMMA': -123, 'RBRACE': -123, 'RPAR': -123, 'VBAR': -123, '_NL': -123},
    {'LPAR': 15, 'NAME': 16, 'PAD': 19, '_NL': 254, 'chain': 255, 'group': 37, 'path': 46, 'station': 83},
    {'RPAR': 256, 'VBAR': 257},
    {'ABOVE': -24, 'AND': -24, 'ARROW': -24, 'AT': -24, 'BECAUSE': -24, 'BELOW': -24, 'CODE': -24, 'COMMA': -24, 'COMMA_NUMBER': -24, 'DOT': -24, 'EQUAL': -24, 'FROM': -24, 'IN': -24, 'LPAR': -24, 'MINUS': -24, 'NAME': -24, 'NUMBER': -24, 'RBRACE': -24, 'RPAR': -24, 'VBAR': -24, 'WITHIN': -24, '_NL': -24},
    {'COMMA': 258, 'RPAR': 259, '__network_star_4': 260},
    {'COMMA': -153, 'RBRACE': -153, '_NL': -153},
    {'COMMA': -161, 'RBRACE': -161, '_NL': -161},
    {'COMMA': -176, 'LBRACE': 119, 'RBRACE': -176, '_NL': -176, 'block': 261},
    {'COMMA': -177, 'RBRACE': -177, '_NL': -177},
    {'ARROW': -28, 'COMMA': -28, 'RBRACE': -28, 'RPAR': -28, 'VBAR': -28, '_NL': -28},
    {'AND': 194, 'BECAUSE': -126},
    {'STRING': 262},
    {'BECAUSE': 263},
    {'COMMA': -34, 'RBRACE': -34, '_NL': -34},
    {'COMMA': -36, 'RBRACE': -36, '_NL': -36},
    {'COMMA': -58, 'RBRACE': -58, '_NL': -58},
    {'ALLOW': 1, 'AMPLIFIER': 2, 'CHOICE': 3, 'COUPLING': 4, 'DESIGN': 5, 'DRIVER': 6, 'EXPECT': 7, 'FIT': 8, 'INCLUDE': 9, 'INPUT': 10, 'KIND': 11, 'LEG': 12, 'LET': 13, 'LIMIT': 14, 'LPAR': 15, 'NAME': 16, 'NETWORK': 17, 'OMIT': 18, 'PAD': 19, 'POSITION': 20, 'POSTS': 21, 'RBRACE': 264, 'SET': 22, 'TESTPOINT': 23, 'USE': 24, 'VARIANT': 25, 'allow': 28, 'amplifier': 29, 'choice': 30, 'coupling': 31, 'design': 32, 'driver': 33, 'entry': 265, 'expect': 35, 'fit': 36, 'group': 37, 'include': 38, 'input': 39, 'leg': 40, 'let': 41, 'limit': 42, 'network': 43, 'omit': 44, 'part': 45, 'path': 46, 'position': 47, 'posts': 48, 'set': 49, 'station': 51, 'testpoint': 52, 'use': 53, 'variant': 54, 'walk': 55},
    {'COMMA': 228, 'RBRACE': 266, '_NL': 230, '_sep': 231},
    {'COMMA': -60, 'RBRACE': -60, '_NL': -60},
    {'COMMA': 228, 'RBRACE': 267, '_NL': 230, '_sep': 268},
    {'ALLOW': -30, 'AMPLIFIER': -30, 'CHOICE': -30, 'CODE': -30, 'COMMA_NUMBER': -30, 'COUPLING': -30, 'DESIGN': -30, 'DRIVER': -30, 'EXPECT': -30, 'FIT': -30, 'INCLUDE': -30, 'INPUT': -30, 'KIND': -30, 'LEG': -30, 'LET': -30, 'LIMIT': -30, 'LPAR': -30, 'MINUS': -30, 'NAME': -30, 'NETWORK': -30, 'NUMBER': -30, 'OMIT': -30, 'PAD': -30, 'POSITION': -30, 'POSTS': -30, 'RBRACE': -30, 'SET': -30, 'TESTPOINT': -30, 'USE': -30, 'VARIANT': -30, '_NL': 269},
    {'COMMA': -61, 'RBRACE': -61, '_NL': -61},
    {'ALLOW': -31, 'AMPLIFIER': -31, 'CHOICE': -31, 'CODE': -31, 'COMMA_NUMBER': -31, 'COUPLING': -31, 'DESIGN': -31, 'DRIVER': -31, 'EXPECT': -31, 'FIT': -31, 'INCLUDE': -31, 'INPUT': -31, 'KIND': -31, 'LEG': -31, 'LET': -31, 'LIMIT': -31, 'LPAR': -31, 'MINUS': -31, 'NAME': -31, 'NETWORK': -31, 'NUMBER': -31, 'OMIT': -31, 'PAD': -31, 'POSITION': -31, 'POSTS': -31, 'RBRACE': -31, 'SET': -31, 'TESTPOINT': -31, 'USE': -31, 'VARIANT': -31},
    {'ALLOW': -3, 'AMPLIFIER': -3, 'CHOICE': -3, 'COUPLING': -3, 'DESIGN': -3, 'DRIVER': -3, 'EXPECT': -3, 'FIT': -3, 'INCLUDE': -3, 'INPUT': -3, 'KIND': -3, 'LEG': -3, 'LET': -3, 'LIMIT': -3, 'LPAR': -3, 'NAME': -3, 'NETWORK': -3, 'OMIT': -3, 'PAD': -3, 'POSITION': -3, 'POSTS': -3, 'RBRACE': -3, 'SET': -3, 'TESTPOINT': -3, 'USE': -3, 'VARIANT': -3},
    {'COMMA': -72, 'RBRACE': -72, '_NL': -72},
    {'COMMA': -134, 'RBRACE': -134, '_NL': -134},
    {'COMMA': -133, 'RBRACE': -133, '_NL': -133},
    {'COMMA': -50, 'RBRACE': -50, '_NL': -50},
    {'CODE': 57, 'COMMA_NUMBER': 58, 'LPAR': 59, 'MINUS': 60, 'NAME': 178, 'NUMBER': 62, 'RBRACE': 270, 'atom': 63, 'expr': 182, 'item': 271, 'power': 65, 'product': 66, 'sum': 67, 'unary': 68},
    {'COMMA': 228, 'RBRACE': 272, '_NL': 230, '_sep': 241},
    {'COMMA': -52, 'RBRACE': -52, '_NL': -52},
    {'COMMA': 228, 'RBRACE': 273, '_NL': 230, '_sep': 274},
    {'COMMA': -53, 'RBRACE': -53, '_NL': -53},
    {'CODE': -1, 'COMMA_NUMBER': -1, 'LPAR': -1, 'MINUS': -1, 'NAME': -1, 'NUMBER': -1, 'RBRACE': -1},
    {'CODE': 57, 'COMMA_NUMBER': 58, 'LPAR': 59, 'MINUS': 60, 'NAME': 61, 'NUMBER': 62, 'atom': 63, 'expr': 275, 'power': 65, 'product': 66, 'sum': 67, 'unary': 68},
    {'ABOVE': 122, 'AT': 123, 'BELOW': 124, 'COMMA': -107, 'FROM': 125, 'RBRACE': -107, 'WITHIN': 127, '_NL': -107, 'clause': 191},
    {'ABOVE': 122, 'AND': 194, 'AT': 123, 'BELOW': 124, 'CODE': 57, 'COMMA': -104, 'COMMA_NUMBER': 58, 'FROM': 125, 'LPAR': 59, 'MINUS': 60, 'NAME': 61, 'NUMBER': 62, 'RBRACE': -104, 'WITHIN': 127, '_NL': -104, '__expect_star_7': 276, 'atom': 63, 'clause': 129, 'expr': 130, 'is': 277, 'power': 65, 'product': 66, 'sum': 67, 'unary': 68},
    {'ABOVE': 122, 'AT': 123, 'BELOW': 124, 'COMMA': -106, 'FROM': 125, 'RBRACE': -106, 'WITHIN': 127, '_NL': -106, '__expect_star_7': 278, 'clause': 129},
    {'ABOVE': -22, 'AND': -22, 'AT': -22, 'BECAUSE': -22, 'BELOW': -22, 'CODE': -22, 'COMMA': -22, 'COMMA_NUMBER': -22, 'FROM': -22, 'LPAR': -22, 'MINUS': -22, 'NAME': -22, 'NUMBER': -22, 'RBRACE': -22, 'WITHIN': -22, '_NL': -22},
    {'AND': -18, 'LBRACE': -18},
    {'ARROW': -120, 'COMMA': -120, 'RBRACE': -120, 'RPAR': -120, 'VBAR': -120, '_NL': -120},
    {'ARROW': -119, 'COMMA': -119, 'RBRACE': -119, 'RPAR': -119, 'VBAR': -119, '_NL': -119},
    {'RPAR': 279, 'VBAR': 257},
    {'RPAR': -11, 'VBAR': -11, '_NL': -11},
    {'LPAR': 15, 'NAME': 16, 'PAD': 19, 'chain': 280, 'group': 37, 'path': 46, 'station': 83},
    {'RPAR': -10, 'VBAR': -10, '_NL': -10},
    {'LPAR': 15, 'NAME': 16, 'PAD': 19, 'chain': 281, 'group': 37, 'path': 46, 'station': 83},
    {'RPAR': -16, 'VBAR': -16, '_NL': -16},
    {'ARROW': -122, 'COMMA': -122, 'RBRACE': -122, 'RPAR': -122, 'VBAR': -122, '_NL': -122},
    {'LPAR': 15, 'NAME': 16, 'PAD': 19, '_NL': 282, 'chain': 283, 'group': 37, 'path': 46, 'station': 83},
    {'NAME': 284},
    {'GIVEN': 285, 'LBRACE': 115, 'body': 286, 'given': 287},
    {'COMMA': 288, 'RPAR': 289},
    {'COMMA': -175, 'RBRACE': -175, '_NL': -175},
    {'COMMA': -33, 'RBRACE': -33, '_NL': -33},
    {'STRING': 290},
    {'COMMA': -56, 'RBRACE': -56, '_NL': -56},
    {'COMMA': 228, 'RBRACE': 291, '_NL': 230, '_sep': 268},
    {'COMMA': -57, 'RBRACE': -57, '_NL': -57},
    {'COMMA': -59, 'RBRACE': -59, '_NL': -59},
    {'ALLOW': -4, 'AMPLIFIER': -4, 'CHOICE': -4, 'COUPLING': -4, 'DESIGN': -4, 'DRIVER': -4, 'EXPECT': -4, 'FIT': -4, 'INCLUDE': -4, 'INPUT': -4, 'KIND': -4, 'LEG': -4, 'LET': -4, 'LIMIT': -4, 'LPAR': -4, 'NAME': -4, 'NETWORK': -4, 'OMIT': -4, 'PAD': -4, 'POSITION': -4, 'POSTS': -4, 'RBRACE': -4, 'SET': -4, 'TESTPOINT': -4, 'USE': -4, 'VARIANT': -4},
    {'ALLOW': -29, 'AMPLIFIER': -29, 'CHOICE': -29, 'CODE': -29, 'COMMA_NUMBER': -29, 'COUPLING': -29, 'DESIGN': -29, 'DRIVER': -29, 'EXPECT': -29, 'FIT': -29, 'INCLUDE': -29, 'INPUT': -29, 'KIND': -29, 'LEG': -29, 'LET': -29, 'LIMIT': -29, 'LPAR': -29, 'MINUS': -29, 'NAME': -29, 'NETWORK': -29, 'NUMBER': -29, 'OMIT': -29, 'PAD': -29, 'POSITION': -29, 'POSTS': -29, 'RBRACE': -29, 'SET': -29, 'TESTPOINT': -29, 'USE': -29, 'VARIANT': -29},
    {'COMMA': -48, 'RBRACE': -48, '_NL': -48},
    {'COMMA': 228, 'RBRACE': 292, '_NL': 230, '_sep': 274},
    {'COMMA': -49, 'RBRACE': -49, '_NL': -49},
    {'COMMA': -51, 'RBRACE': -51, '_NL': -51},
    {'CODE': -2, 'COMMA_NUMBER': -2, 'LPAR': -2, 'MINUS': -2, 'NAME': -2, 'NUMBER': -2, 'RBRACE': -2},
    {'ABOVE': -71, 'AT': -71, 'BELOW': -71, 'COMMA': -71, 'FROM': -71, 'RBRACE': -71, 'WITHIN': -71, '_NL': -71},
    {'ABOVE': 122, 'AT': 123, 'BELOW': 124, 'COMMA': -103, 'FROM': 125, 'RBRACE': -103, 'WITHIN': 127, '_NL': -103, 'clause': 191},
    {'ABOVE': 122, 'AT': 123, 'BELOW': 124, 'COMMA': -102, 'FROM': 125, 'RBRACE': -102, 'WITHIN': 127, '_NL': -102, '__expect_star_7': 293, 'clause': 129},
    {'ABOVE': 122, 'AT': 123, 'BELOW': 124, 'COMMA': -105, 'FROM': 125, 'RBRACE': -105, 'WITHIN': 127, '_NL': -105, 'clause': 191},
    {'ARROW': -118, 'COMMA': -118, 'RBRACE': -118, 'RPAR': -118, 'VBAR': -118, '_NL': -118},
    {'RPAR': -9, 'VBAR': -9, '_NL': -9},
    {'RPAR': -15, 'VBAR': -15, '_NL': -15},
    {'LPAR': 15, 'NAME': 16, 'PAD': 19, 'chain': 294, 'group': 37, 'path': 46, 'station': 83},
    {'RPAR': -14, 'VBAR': -14, '_NL': -14},
    {'COMMA': -19, 'RPAR': -19},
    {'NAME': 295, 'param': 296},
    {'COMMA': -142, 'RBRACE': -142, '_NL': -142},
    {'LBRACE': 115, 'body': 297},
    {'NAME': 298},
    {'GIVEN': 285, 'LBRACE': 115, 'body': 299, 'given': 300},
    {'COMMA': -32, 'RBRACE': -32, '_NL': -32},
    {'COMMA': -55, 'RBRACE': -55, '_NL': -55},
    {'COMMA': -47, 'RBRACE': -47, '_NL': -47},
    {'ABOVE': 122, 'AT': 123, 'BELOW': 124, 'COMMA': -101, 'FROM': 125, 'RBRACE': -101, 'WITHIN': 127, '_NL': -101, 'clause': 191},
    {'RPAR': -13, 'VBAR': -13, '_NL': -13},
    {'COMMA': -146, 'EQUAL': 301, 'LBRACE': -146},
    {'COMMA': 302, 'LBRACE': -117, '__given_star_5': 303},
    {'COMMA': -141, 'RBRACE': -141, '_NL': -141},
    {'COMMA': -20, 'RPAR': -20},
    {'COMMA': -140, 'RBRACE': -140, '_NL': -140},
    {'LBRACE': 115, 'body': 304},
    {'CODE': 57, 'COMMA_NUMBER': 58, 'LPAR': 59, 'MINUS': 60, 'NAME': 61, 'NUMBER': 62, 'atom': 63, 'expr': 305, 'power': 65, 'product': 66, 'sum': 67, 'unary': 68},
    {'NAME': 295, 'param': 306},
    {'COMMA': 307, 'LBRACE': -116},
    {'COMMA': -139, 'RBRACE': -139, '_NL': -139},
    {'COMMA': -145, 'LBRACE': -145},
    {'COMMA': -7, 'LBRACE': -7},
    {'NAME': 295, 'param': 308},
    {'COMMA': -8, 'LBRACE': -8},
)
