"""The automaton's tables. Do not edit: made from the grammar by `python -m shuntwise.house.tables`.

`TERMINALS` are patterns in the order in which they are tried, `KEYWORDS` words that are names elsewhere. A rule is
its symbol, its node's name (None: its children go to the rule above), its length, the places of the children that
are kept, and whether a lone child stands for the node. A state leads by symbol to another, or (below zero) to the
rule ~n that is then reduced. `PART_KINDS` are the words that declare a part, each with an example of what follows.

Long because it is a table.
"""

from __future__ import annotations

START, END = 0, 46
IGNORED = frozenset(['COMMENT', 'WS'])

PART_KINDS: dict[str, str] = {
    'coil': 'L1 0.82 mH',
    'tapped coil': 'T1 1.2 mH { tap 0.3 mH }',
    'capacitor': 'C1 6.8 uF',
    'resistor': 'R1 3.3 ohm',
    'lamp': 'B1 5 ohm { hot 58 ohm }',
    'fuse': 'F1 2.5 A',
    'protector': 'F2 0.9 A',
    'link': 'K1',
}

TERMINALS: dict[str, str] = {
    'KIND': '(?:tapped[ \t]+coil|coil|capacitor|resistor|lamp|fuse|protector|link)(?!\\w)',
    'CODE': '[0-9]+(?:[RKMGLkmunpµμ][0-9]+[BCDGJKM]?|R[0-9]+F|[RLkKMGmunpµμ])(?!\\w)',
    'PAD': '(?!non-polar(?!\\w))[^\\W\\d]\\w*(?:\\+|-(?!-))',
    'FINDING': '[a-z][a-z0-9]*(?:-[a-z0-9]+)*',
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
    ('allow', 'allow', 6, (1, 3, 5), False),  # allow: ALLOW FINDING ON path BECAUSE STRING
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
    {'$END': -155, 'ALLOW': 1, 'AMPLIFIER': 2, 'COUPLING': 3, 'DESIGN': 4, 'DRIVER': 5, 'EXPECT': 6, 'FIT': 7, 'INCLUDE': 8, 'INPUT': 9, 'KIND': 10, 'LEG': 11, 'LET': 12, 'LIMIT': 13, 'LPAR': 14, 'NAME': 15, 'NETWORK': 16, 'OMIT': 17, 'PAD': 18, 'POSTS': 19, 'SET': 20, 'TESTPOINT': 21, 'USE': 22, 'VARIANT': 23, '_NL': 24, '__start_star_0': 25, 'allow': 26, 'amplifier': 27, 'coupling': 28, 'design': 29, 'driver': 30, 'entry': 31, 'expect': 32, 'fit': 33, 'group': 34, 'include': 35, 'input': 36, 'leg': 37, 'let': 38, 'limit': 39, 'network': 40, 'omit': 41, 'part': 42, 'path': 43, 'posts': 44, 'set': 45, 'start': 46, 'station': 47, 'testpoint': 48, 'use': 49, 'variant': 50, 'walk': 51},
    {'FINDING': 52},
    {'CODE': 53, 'COMMA_NUMBER': 54, 'LPAR': 55, 'MINUS': 56, 'NAME': 57, 'NUMBER': 58, 'atom': 59, 'expr': 60, 'power': 61, 'product': 62, 'sum': 63, 'unary': 64},
    {'NAME': 15, 'path': 65},
    {'STRING': 66},
    {'NAME': 67},
    {'NAME': 68},
    {'NAME': 15, 'path': 69},
    {'STRING': 70},
    {'NAME': 71},
    {'NAME': 72},
    {'NAME': 73},
    {'NAME': 74},
    {'FINDING': 75},
    {'LPAR': 14, 'NAME': 15, 'PAD': 18, '_NL': 76, 'chain': 77, 'group': 34, 'path': 43, 'station': 78},
    {'ABOVE': -144, 'AND': -144, 'ARROW': -144, 'AT': -144, 'BECAUSE': -144, 'BELOW': -144, 'CODE': -144, 'COMMA': -144, 'COMMA_NUMBER': -144, 'DOT': 79, 'EQUAL': -144, 'FROM': -144, 'LPAR': -144, 'MINUS': -144, 'NAME': -144, 'NUMBER': -144, 'RBRACE': -144, 'RPAR': -144, 'VBAR': -144, 'WITHIN': -144, '_NL': -144, '__path_star_10': 80},
    {'NAME': 81},
    {'NAME': 15, 'path': 82},
    {'ARROW': -156, 'COMMA': -156, 'RBRACE': -156, 'RPAR': -156, 'VBAR': -156, '_NL': -156},
    {'NAME': 83},
    {'NAME': 15, 'path': 84},
    {'NAME': 85},
    {'NAME': 86},
    {'NAME': 87},
    {'$END': -153, 'ALLOW': 1, 'AMPLIFIER': 2, 'COUPLING': 3, 'DESIGN': 4, 'DRIVER': 5, 'EXPECT': 6, 'FIT': 7, 'INCLUDE': 8, 'INPUT': 9, 'KIND': 10, 'LEG': 11, 'LET': 12, 'LIMIT': 13, 'LPAR': 14, 'NAME': 15, 'NETWORK': 16, 'OMIT': 17, 'PAD': 18, 'POSTS': 19, 'SET': 20, 'TESTPOINT': 21, 'USE': 22, 'VARIANT': 23, '__start_star_0': 88, 'allow': 26, 'amplifier': 27, 'coupling': 28, 'design': 29, 'driver': 30, 'entry': 31, 'expect': 32, 'fit': 33, 'group': 34, 'include': 35, 'input': 36, 'leg': 37, 'let': 38, 'limit': 39, 'network': 40, 'omit': 41, 'part': 42, 'path': 43, 'posts': 44, 'set': 45, 'station': 47, 'testpoint': 48, 'use': 49, 'variant': 50, 'walk': 51},
    {'$END': -154, 'ALLOW': 1, 'AMPLIFIER': 2, 'COUPLING': 3, 'DESIGN': 4, 'DRIVER': 5, 'EXPECT': 6, 'FIT': 7, 'INCLUDE': 8, 'INPUT': 9, 'KIND': 10, 'LEG': 11, 'LET': 12, 'LIMIT': 13, 'LPAR': 14, 'NAME': 15, 'NETWORK': 16, 'OMIT': 17, 'PAD': 18, 'POSTS': 19, 'SET': 20, 'TESTPOINT': 21, 'USE': 22, 'VARIANT': 23, 'allow': 26, 'amplifier': 27, 'coupling': 28, 'design': 29, 'driver': 30, 'entry': 89, 'expect': 32, 'fit': 33, 'group': 34, 'include': 35, 'input': 36, 'leg': 37, 'let': 38, 'limit': 39, 'network': 40, 'omit': 41, 'part': 42, 'path': 43, 'posts': 44, 'set': 45, 'station': 47, 'testpoint': 48, 'use': 49, 'variant': 50, 'walk': 51},
    {'COMMA': -93, 'RBRACE': -93, '_NL': -93},
    {'COMMA': -75, 'RBRACE': -75, '_NL': -75},
    {'COMMA': -80, 'RBRACE': -80, '_NL': -80},
    {'COMMA': -74, 'RBRACE': -74, '_NL': -74},
    {'COMMA': -78, 'RBRACE': -78, '_NL': -78},
    {'_NL': 90},
    {'COMMA': -92, 'RBRACE': -92, '_NL': -92},
    {'COMMA': -88, 'RBRACE': -88, '_NL': -88},
    {'ARROW': -158, 'COMMA': -158, 'RBRACE': -158, 'RPAR': -158, 'VBAR': -158, '_NL': -158},
    {'COMMA': -91, 'RBRACE': -91, '_NL': -91},
    {'COMMA': -76, 'RBRACE': -76, '_NL': -76},
    {'COMMA': -84, 'RBRACE': -84, '_NL': -84},
    {'COMMA': -81, 'RBRACE': -81, '_NL': -81},
    {'COMMA': -94, 'RBRACE': -94, '_NL': -94},
    {'COMMA': -82, 'RBRACE': -82, '_NL': -82},
    {'COMMA': -87, 'RBRACE': -87, '_NL': -87},
    {'COMMA': -79, 'RBRACE': -79, '_NL': -79},
    {'ARROW': -157, 'COMMA': -157, 'RBRACE': -157, 'RPAR': -157, 'VBAR': -157, '_NL': -157},
    {'COMMA': -77, 'RBRACE': -77, '_NL': -77},
    {'COMMA': -89, 'RBRACE': -89, '_NL': -89},
    {},
    {'ARROW': 91, 'COMMA': -170, 'RBRACE': -170, '_NL': -170, '__walk_star_2': 92},
    {'COMMA': -86, 'RBRACE': -86, '_NL': -86},
    {'COMMA': -83, 'RBRACE': -83, '_NL': -83},
    {'COMMA': -90, 'RBRACE': -90, '_NL': -90},
    {'COMMA': -85, 'RBRACE': -85, '_NL': -85},
    {'BECAUSE': 93, 'ON': 94},
    {'ABOVE': -42, 'AT': -42, 'BELOW': -42, 'CIRCUMFLEX': -42, 'COMMA': -42, 'FROM': -42, 'INTO': -42, 'LBRACE': -42, 'MINUS': -42, 'PLUS': -42, 'RBRACE': -42, 'RPAR': -42, 'SLASH': -42, 'STAR': -42, 'TO': -42, 'WITHIN': -42, '_NL': -42},
    {'ABOVE': -41, 'AT': -41, 'BELOW': -41, 'CIRCUMFLEX': -41, 'COMMA': -41, 'FROM': -41, 'INTO': -41, 'LBRACE': -41, 'MINUS': -41, 'NAME': 95, 'PERCENT': 96, 'PLUS': -41, 'RBRACE': -41, 'RPAR': -41, 'SLASH': -41, 'STAR': -41, 'TO': -41, 'WITHIN': -41, '_NL': -41},
    {'CODE': 53, 'COMMA_NUMBER': 54, 'LPAR': 55, 'MINUS': 56, 'NAME': 57, 'NUMBER': 58, 'atom': 59, 'expr': 97, 'power': 61, 'product': 62, 'sum': 63, 'unary': 64},
    {'CODE': 53, 'COMMA_NUMBER': 54, 'LPAR': 55, 'MINUS': 56, 'NAME': 57, 'NUMBER': 58, 'atom': 59, 'unary': 98},
    {'ABOVE': -43, 'AT': -43, 'BELOW': -43, 'CIRCUMFLEX': -43, 'COMMA': -43, 'FROM': -43, 'INTO': -43, 'LBRACE': -43, 'MINUS': -43, 'PLUS': -43, 'RBRACE': -43, 'RPAR': -43, 'SLASH': -43, 'STAR': -43, 'TO': -43, 'WITHIN': -43, '_NL': -43},
    {'ABOVE': -38, 'AT': -38, 'BELOW': -38, 'CIRCUMFLEX': -38, 'COMMA': -38, 'FROM': -38, 'INTO': -38, 'LBRACE': -38, 'MINUS': -38, 'NAME': 99, 'PERCENT': 100, 'PLUS': -38, 'RBRACE': -38, 'RPAR': -38, 'SLASH': -38, 'STAR': -38, 'TO': -38, 'WITHIN': -38, '_NL': -38},
    {'ABOVE': -163, 'AT': -163, 'BELOW': -163, 'CIRCUMFLEX': -163, 'COMMA': -163, 'FROM': -163, 'INTO': -163, 'LBRACE': -163, 'MINUS': -163, 'PLUS': -163, 'RBRACE': -163, 'RPAR': -163, 'SLASH': -163, 'STAR': -163, 'TO': -163, 'WITHIN': -163, '_NL': -163},
    {'INTO': 101},
    {'ABOVE': -148, 'AT': -148, 'BELOW': -148, 'COMMA': -148, 'FROM': -148, 'INTO': -148, 'LBRACE': -148, 'MINUS': -148, 'PLUS': -148, 'RBRACE': -148, 'RPAR': -148, 'SLASH': -148, 'STAR': -148, 'TO': -148, 'WITHIN': -148, '_NL': -148},
    {'ABOVE': -159, 'AT': -159, 'BELOW': -159, 'COMMA': -159, 'FROM': -159, 'INTO': -159, 'LBRACE': -159, 'MINUS': -159, 'PLUS': -159, 'RBRACE': -159, 'RPAR': -159, 'SLASH': 102, 'STAR': 103, 'TO': -159, 'WITHIN': -159, '_NL': -159},
    {'ABOVE': -107, 'AT': -107, 'BELOW': -107, 'COMMA': -107, 'FROM': -107, 'INTO': -107, 'LBRACE': -107, 'MINUS': 104, 'PLUS': 105, 'RBRACE': -107, 'RPAR': -107, 'TO': -107, 'WITHIN': -107, '_NL': -107},
    {'ABOVE': -146, 'AT': -146, 'BELOW': -146, 'CIRCUMFLEX': 106, 'COMMA': -146, 'FROM': -146, 'INTO': -146, 'LBRACE': -146, 'MINUS': -146, 'PLUS': -146, 'RBRACE': -146, 'RPAR': -146, 'SLASH': -146, 'STAR': -146, 'TO': -146, 'WITHIN': -146, '_NL': -146},
    {'AND': 107},
    {'COMMA': -69, 'RBRACE': -69, '_NL': -69},
    {'CODE': 53, 'COMMA': -73, 'COMMA_NUMBER': 54, 'LBRACE': 108, 'LPAR': 55, 'MINUS': 56, 'NAME': 57, 'NUMBER': 58, 'RBRACE': -73, '_NL': -73, 'atom': 59, 'block': 109, 'expr': 110, 'power': 61, 'product': 62, 'sum': 63, 'unary': 64},
    {'ABOVE': 111, 'AT': 112, 'BELOW': 113, 'CODE': 53, 'COMMA': -106, 'COMMA_NUMBER': 54, 'FROM': 114, 'LPAR': 55, 'MINUS': 56, 'NAME': 57, 'NUMBER': 58, 'OF': 115, 'RBRACE': -106, 'WITHIN': 116, '_NL': -106, '__expect_star_7': 117, 'atom': 59, 'clause': 118, 'expr': 119, 'is': 120, 'power': 61, 'product': 62, 'sum': 63, 'unary': 64},
    {'AND': 121, 'COMMA': -109, 'RBRACE': -109, '_NL': -109, '__omit_star_6': 122},
    {'COMMA': -121, 'FROM': 123, 'RBRACE': -121, '_NL': -121},
    {'COMMA': -122, 'RBRACE': -122, '_NL': -122},
    {'CODE': 53, 'COMMA': -142, 'COMMA_NUMBER': 54, 'LBRACE': 108, 'LPAR': 55, 'MINUS': 56, 'NAME': 57, 'NUMBER': 58, 'RBRACE': -142, '_NL': -142, 'atom': 59, 'block': 124, 'expr': 125, 'power': 61, 'product': 62, 'sum': 63, 'unary': 64},
    {'AND': 126, 'LBRACE': 127, '__leg_star_1': 128, 'body': 129},
    {'EQUAL': 130},
    {'CODE': 53, 'COMMA_NUMBER': 54, 'LPAR': 55, 'MINUS': 56, 'NAME': 57, 'NUMBER': 58, 'atom': 59, 'expr': 131, 'power': 61, 'product': 62, 'sum': 63, 'unary': 64},
    {'LPAR': 14, 'NAME': 15, 'PAD': 18, 'chain': 132, 'group': 34, 'path': 43, 'station': 78},
    {'RPAR': 133, 'VBAR': 134, '_NL': 135, '__group_star_3': 136},
    {'ARROW': 91, 'RPAR': -62, 'VBAR': -62, '_NL': -62, '__walk_star_2': 137},
    {'NAME': 138},
    {'ABOVE': -143, 'AND': -143, 'ARROW': -143, 'AT': -143, 'BECAUSE': -143, 'BELOW': -143, 'CODE': -143, 'COMMA': -143, 'COMMA_NUMBER': -143, 'DOT': 139, 'EQUAL': -143, 'FROM': -143, 'LPAR': -143, 'MINUS': -143, 'NAME': -143, 'NUMBER': -143, 'RBRACE': -143, 'RPAR': -143, 'VBAR': -143, 'WITHIN': -143, '_NL': -143},
    {'LPAR': 140},
    {'AND': 121, 'COMMA': -136, 'RBRACE': -136, '_NL': -136, '__omit_star_6': 141},
    {'COMMA': -145, 'RBRACE': -145, '_NL': -145},
    {'EQUAL': 142},
    {'COMMA': -162, 'RBRACE': -162, '_NL': -162},
    {'AS': 143},
    {'LBRACE': 127, 'STRING': 144, 'body': 145},
    {'$END': -152, 'ALLOW': 1, 'AMPLIFIER': 2, 'COUPLING': 3, 'DESIGN': 4, 'DRIVER': 5, 'EXPECT': 6, 'FIT': 7, 'INCLUDE': 8, 'INPUT': 9, 'KIND': 10, 'LEG': 11, 'LET': 12, 'LIMIT': 13, 'LPAR': 14, 'NAME': 15, 'NETWORK': 16, 'OMIT': 17, 'PAD': 18, 'POSTS': 19, 'SET': 20, 'TESTPOINT': 21, 'USE': 22, 'VARIANT': 23, 'allow': 26, 'amplifier': 27, 'coupling': 28, 'design': 29, 'driver': 30, 'entry': 89, 'expect': 32, 'fit': 33, 'group': 34, 'include': 35, 'input': 36, 'leg': 37, 'let': 38, 'limit': 39, 'network': 40, 'omit': 41, 'part': 42, 'path': 43, 'posts': 44, 'set': 45, 'station': 47, 'testpoint': 48, 'use': 49, 'variant': 50, 'walk': 51},
    {'_NL': 146},
    {'$END': -25, 'ALLOW': -25, 'AMPLIFIER': -25, 'COUPLING': -25, 'DESIGN': -25, 'DRIVER': -25, 'EXPECT': -25, 'FIT': -25, 'INCLUDE': -25, 'INPUT': -25, 'KIND': -25, 'LEG': -25, 'LET': -25, 'LIMIT': -25, 'LPAR': -25, 'NAME': -25, 'NETWORK': -25, 'OMIT': -25, 'PAD': -25, 'POSTS': -25, 'SET': -25, 'TESTPOINT': -25, 'USE': -25, 'VARIANT': -25},
    {'LPAR': 14, 'NAME': 15, 'PAD': 18, 'group': 34, 'path': 43, 'station': 147},
    {'ARROW': 148, 'COMMA': -169, 'RBRACE': -169, '_NL': -169},
    {'STRING': 149},
    {'NAME': 15, 'path': 150},
    {'ABOVE': -39, 'AT': -39, 'BELOW': -39, 'CIRCUMFLEX': -39, 'COMMA': -39, 'FROM': -39, 'INTO': -39, 'LBRACE': -39, 'MINUS': -39, 'PLUS': -39, 'RBRACE': -39, 'RPAR': -39, 'SLASH': -39, 'STAR': -39, 'TO': -39, 'WITHIN': -39, '_NL': -39},
    {'ABOVE': -40, 'AT': -40, 'BELOW': -40, 'CIRCUMFLEX': -40, 'COMMA': -40, 'FROM': -40, 'INTO': -40, 'LBRACE': -40, 'MINUS': -40, 'PLUS': -40, 'RBRACE': -40, 'RPAR': -40, 'SLASH': -40, 'STAR': -40, 'TO': -40, 'WITHIN': -40, '_NL': -40},
    {'RPAR': 151},
    {'ABOVE': -164, 'AT': -164, 'BELOW': -164, 'CIRCUMFLEX': -164, 'COMMA': -164, 'FROM': -164, 'INTO': -164, 'LBRACE': -164, 'MINUS': -164, 'PLUS': -164, 'RBRACE': -164, 'RPAR': -164, 'SLASH': -164, 'STAR': -164, 'TO': -164, 'WITHIN': -164, '_NL': -164},
    {'ABOVE': -36, 'AT': -36, 'BELOW': -36, 'CIRCUMFLEX': -36, 'COMMA': -36, 'FROM': -36, 'INTO': -36, 'LBRACE': -36, 'MINUS': -36, 'PLUS': -36, 'RBRACE': -36, 'RPAR': -36, 'SLASH': -36, 'STAR': -36, 'TO': -36, 'WITHIN': -36, '_NL': -36},
    {'ABOVE': -37, 'AT': -37, 'BELOW': -37, 'CIRCUMFLEX': -37, 'COMMA': -37, 'FROM': -37, 'INTO': -37, 'LBRACE': -37, 'MINUS': -37, 'PLUS': -37, 'RBRACE': -37, 'RPAR': -37, 'SLASH': -37, 'STAR': -37, 'TO': -37, 'WITHIN': -37, '_NL': -37},
    {'CODE': 53, 'COMMA_NUMBER': 54, 'LPAR': 55, 'MINUS': 56, 'NAME': 57, 'NUMBER': 58, 'atom': 59, 'expr': 152, 'power': 61, 'product': 62, 'sum': 63, 'unary': 64},
    {'CODE': 53, 'COMMA_NUMBER': 54, 'LPAR': 55, 'MINUS': 56, 'NAME': 57, 'NUMBER': 58, 'atom': 59, 'power': 153, 'unary': 64},
    {'CODE': 53, 'COMMA_NUMBER': 54, 'LPAR': 55, 'MINUS': 56, 'NAME': 57, 'NUMBER': 58, 'atom': 59, 'power': 154, 'unary': 64},
    {'CODE': 53, 'COMMA_NUMBER': 54, 'LPAR': 55, 'MINUS': 56, 'NAME': 57, 'NUMBER': 58, 'atom': 59, 'power': 61, 'product': 155, 'unary': 64},
    {'CODE': 53, 'COMMA_NUMBER': 54, 'LPAR': 55, 'MINUS': 56, 'NAME': 57, 'NUMBER': 58, 'atom': 59, 'power': 61, 'product': 156, 'unary': 64},
    {'CODE': 53, 'COMMA_NUMBER': 54, 'LPAR': 55, 'MINUS': 56, 'NAME': 57, 'NUMBER': 58, 'atom': 59, 'power': 157, 'unary': 64},
    {'NAME': 15, 'path': 158},
    {'CODE': 53, 'COMMA_NUMBER': 54, 'LPAR': 55, 'MINUS': 56, 'NAME': 159, 'NUMBER': 58, 'RBRACE': 160, '_NL': 161, '__block_star_9': 162, 'atom': 59, 'expr': 163, 'item': 164, 'power': 61, 'product': 62, 'sum': 63, 'unary': 64},
    {'COMMA': -72, 'RBRACE': -72, '_NL': -72},
    {'COMMA': -71, 'LBRACE': 108, 'RBRACE': -71, '_NL': -71, 'block': 165},
    {'CODE': 53, 'COMMA_NUMBER': 54, 'LPAR': 55, 'MINUS': 56, 'NAME': 57, 'NUMBER': 58, 'atom': 59, 'expr': 166, 'power': 61, 'product': 62, 'sum': 63, 'unary': 64},
    {'CODE': 53, 'COMMA_NUMBER': 54, 'LPAR': 55, 'MINUS': 56, 'NAME': 57, 'NUMBER': 58, 'atom': 59, 'expr': 167, 'power': 61, 'product': 62, 'sum': 63, 'unary': 64},
    {'CODE': 53, 'COMMA_NUMBER': 54, 'LPAR': 55, 'MINUS': 56, 'NAME': 57, 'NUMBER': 58, 'atom': 59, 'expr': 168, 'power': 61, 'product': 62, 'sum': 63, 'unary': 64},
    {'CODE': 53, 'COMMA_NUMBER': 54, 'LPAR': 55, 'MINUS': 56, 'NAME': 57, 'NUMBER': 58, 'atom': 59, 'expr': 169, 'power': 61, 'product': 62, 'sum': 63, 'unary': 64},
    {'NAME': 15, 'path': 170},
    {'CODE': 53, 'COMMA_NUMBER': 54, 'LPAR': 55, 'MINUS': 56, 'NAME': 57, 'NUMBER': 58, 'atom': 59, 'expr': 171, 'power': 61, 'product': 62, 'sum': 63, 'unary': 64},
    {'ABOVE': 111, 'AT': 112, 'BELOW': 113, 'COMMA': -105, 'FROM': 114, 'RBRACE': -105, 'WITHIN': 116, '_NL': -105, 'clause': 172},
    {'ABOVE': -5, 'AT': -5, 'BELOW': -5, 'COMMA': -5, 'FROM': -5, 'RBRACE': -5, 'WITHIN': -5, '_NL': -5},
    {'ABOVE': -123, 'AT': -123, 'BELOW': -123, 'COMMA': -123, 'FROM': -123, 'RBRACE': -123, 'WITHIN': -123, '_NL': -123},
    {'ABOVE': 111, 'AT': 112, 'BELOW': 113, 'COMMA': -104, 'FROM': 114, 'RBRACE': -104, 'WITHIN': 116, '_NL': -104, '__expect_star_7': 173, 'clause': 118},
    {'NAME': 15, 'path': 174},
    {'AND': 175, 'COMMA': -108, 'RBRACE': -108, '_NL': -108},
    {'LIBRARY': 176},
    {'COMMA': -141, 'RBRACE': -141, '_NL': -141},
    {'COMMA': -140, 'LBRACE': 108, 'RBRACE': -140, '_NL': -140, 'block': 177},
    {'NAME': 178},
    {'ALLOW': 1, 'AMPLIFIER': 2, 'COUPLING': 3, 'DESIGN': 4, 'DRIVER': 5, 'EXPECT': 6, 'FIT': 7, 'INCLUDE': 8, 'INPUT': 9, 'KIND': 10, 'LEG': 11, 'LET': 12, 'LIMIT': 13, 'LPAR': 14, 'NAME': 15, 'NETWORK': 16, 'OMIT': 17, 'PAD': 18, 'POSTS': 19, 'RBRACE': 179, 'SET': 20, 'TESTPOINT': 21, 'USE': 22, 'VARIANT': 23, '_NL': 180, '__body_star_8': 181, 'allow': 26, 'amplifier': 27, 'coupling': 28, 'design': 29, 'driver': 30, 'entry': 182, 'expect': 32, 'fit': 33, 'group': 34, 'include': 35, 'input': 36, 'leg': 37, 'let': 38, 'limit': 39, 'network': 40, 'omit': 41, 'part': 42, 'path': 43, 'posts': 44, 'set': 45, 'station': 47, 'testpoint': 48, 'use': 49, 'variant': 50, 'walk': 51},
    {'AND': 183, 'LBRACE': 127, 'body': 184},
    {'COMMA': -128, 'RBRACE': -128, '_NL': -128},
    {'CODE': 53, 'COMMA_NUMBER': 54, 'LPAR': 55, 'MINUS': 56, 'NAME': 57, 'NUMBER': 58, 'atom': 59, 'expr': 185, 'power': 61, 'product': 62, 'sum': 63, 'unary': 64},
    {'COMMA': -130, 'RBRACE': -130, '_NL': -130},
    {'RPAR': 186, 'VBAR': 134, '_NL': 187, '__group_star_3': 188},
    {'ARROW': -119, 'COMMA': -119, 'RBRACE': -119, 'RPAR': -119, 'VBAR': -119, '_NL': -119},
    {'LPAR': 14, 'NAME': 15, 'PAD': 18, '_NL': 189, 'chain': 190, 'group': 34, 'path': 43, 'station': 78},
    {'RPAR': 191, 'VBAR': 192},
    {'RPAR': 193, 'VBAR': 194, '_NL': 195},
    {'ARROW': 148, 'RPAR': -61, 'VBAR': -61, '_NL': -61},
    {'ABOVE': -23, 'AND': -23, 'ARROW': -23, 'AT': -23, 'BECAUSE': -23, 'BELOW': -23, 'CODE': -23, 'COMMA': -23, 'COMMA_NUMBER': -23, 'DOT': -23, 'EQUAL': -23, 'FROM': -23, 'LPAR': -23, 'MINUS': -23, 'NAME': -23, 'NUMBER': -23, 'RBRACE': -23, 'RPAR': -23, 'VBAR': -23, 'WITHIN': -23, '_NL': -23},
    {'NAME': 196},
    {'NAME': 197},
    {'AND': 175, 'COMMA': -135, 'RBRACE': -135, '_NL': -135},
    {'CODE': 53, 'COMMA_NUMBER': 54, 'LPAR': 55, 'MINUS': 56, 'NAME': 57, 'NUMBER': 58, 'atom': 59, 'expr': 198, 'power': 61, 'product': 62, 'sum': 63, 'unary': 64},
    {'NAME': 199},
    {'LBRACE': 127, 'body': 200},
    {'COMMA': -168, 'RBRACE': -168, '_NL': -168},
    {'$END': -26, 'ALLOW': -26, 'AMPLIFIER': -26, 'COUPLING': -26, 'DESIGN': -26, 'DRIVER': -26, 'EXPECT': -26, 'FIT': -26, 'INCLUDE': -26, 'INPUT': -26, 'KIND': -26, 'LEG': -26, 'LET': -26, 'LIMIT': -26, 'LPAR': -26, 'NAME': -26, 'NETWORK': -26, 'OMIT': -26, 'PAD': -26, 'POSTS': -26, 'SET': -26, 'TESTPOINT': -26, 'USE': -26, 'VARIANT': -26},
    {'ARROW': -27, 'COMMA': -27, 'RBRACE': -27, 'RPAR': -27, 'VBAR': -27, '_NL': -27},
    {'LPAR': 14, 'NAME': 15, 'PAD': 18, 'group': 34, 'path': 43, 'station': 201},
    {'COMMA': -33, 'RBRACE': -33, '_NL': -33},
    {'BECAUSE': 202},
    {'ABOVE': -44, 'AT': -44, 'BELOW': -44, 'CIRCUMFLEX': -44, 'COMMA': -44, 'FROM': -44, 'INTO': -44, 'LBRACE': -44, 'MINUS': -44, 'PLUS': -44, 'RBRACE': -44, 'RPAR': -44, 'SLASH': -44, 'STAR': -44, 'TO': -44, 'WITHIN': -44, '_NL': -44},
    {'COMMA': -35, 'LBRACE': 108, 'RBRACE': -35, '_NL': -35, 'block': 203},
    {'ABOVE': -150, 'AT': -150, 'BELOW': -150, 'COMMA': -150, 'FROM': -150, 'INTO': -150, 'LBRACE': -150, 'MINUS': -150, 'PLUS': -150, 'RBRACE': -150, 'RPAR': -150, 'SLASH': -150, 'STAR': -150, 'TO': -150, 'WITHIN': -150, '_NL': -150},
    {'ABOVE': -149, 'AT': -149, 'BELOW': -149, 'COMMA': -149, 'FROM': -149, 'INTO': -149, 'LBRACE': -149, 'MINUS': -149, 'PLUS': -149, 'RBRACE': -149, 'RPAR': -149, 'SLASH': -149, 'STAR': -149, 'TO': -149, 'WITHIN': -149, '_NL': -149},
    {'ABOVE': -161, 'AT': -161, 'BELOW': -161, 'COMMA': -161, 'FROM': -161, 'INTO': -161, 'LBRACE': -161, 'MINUS': -161, 'PLUS': -161, 'RBRACE': -161, 'RPAR': -161, 'SLASH': 102, 'STAR': 103, 'TO': -161, 'WITHIN': -161, '_NL': -161},
    {'ABOVE': -160, 'AT': -160, 'BELOW': -160, 'COMMA': -160, 'FROM': -160, 'INTO': -160, 'LBRACE': -160, 'MINUS': -160, 'PLUS': -160, 'RBRACE': -160, 'RPAR': -160, 'SLASH': 102, 'STAR': 103, 'TO': -160, 'WITHIN': -160, '_NL': -160},
    {'ABOVE': -147, 'AT': -147, 'BELOW': -147, 'COMMA': -147, 'FROM': -147, 'INTO': -147, 'LBRACE': -147, 'MINUS': -147, 'PLUS': -147, 'RBRACE': -147, 'RPAR': -147, 'SLASH': -147, 'STAR': -147, 'TO': -147, 'WITHIN': -147, '_NL': -147},
    {'CODE': 53, 'COMMA_NUMBER': 54, 'LPAR': 55, 'MINUS': 56, 'NAME': 57, 'NUMBER': 58, 'atom': 59, 'expr': 204, 'power': 61, 'product': 62, 'sum': 63, 'unary': 64},
    {'CIRCUMFLEX': -43, 'CODE': 53, 'COMMA': -43, 'COMMA_NUMBER': 54, 'LPAR': 55, 'MINUS': 56, 'NAME': 57, 'NUMBER': 58, 'PLUS': -43, 'RBRACE': -43, 'SLASH': -43, 'STAR': -43, 'STRING': 205, '_NL': -43, 'atom': 59, 'expr': 206, 'power': 61, 'product': 62, 'sum': 63, 'unary': 64},
    {'COMMA': -52, 'RBRACE': -52, '_NL': -52},
    {'CODE': 53, 'COMMA_NUMBER': 54, 'LPAR': 55, 'MINUS': 56, 'NAME': 159, 'NUMBER': 58, 'RBRACE': 207, '__block_star_9': 208, 'atom': 59, 'expr': 163, 'item': 209, 'power': 61, 'product': 62, 'sum': 63, 'unary': 64},
    {'CODE': 53, 'COMMA_NUMBER': 54, 'LPAR': 55, 'MINUS': 56, 'NAME': 159, 'NUMBER': 58, 'RBRACE': 210, 'atom': 59, 'expr': 163, 'item': 211, 'power': 61, 'product': 62, 'sum': 63, 'unary': 64},
    {'COMMA': -124, 'RBRACE': -124, '_NL': -124},
    {'COMMA': 212, 'RBRACE': 213, '_NL': 214, '_sep': 215},
    {'COMMA': -70, 'RBRACE': -70, '_NL': -70},
    {'ABOVE': -65, 'AT': -65, 'BELOW': -65, 'COMMA': -65, 'FROM': -65, 'RBRACE': -65, 'WITHIN': -65, '_NL': -65},
    {'ABOVE': -63, 'AT': -63, 'BELOW': -63, 'COMMA': -63, 'FROM': -63, 'RBRACE': -63, 'WITHIN': -63, '_NL': -63},
    {'ABOVE': -66, 'AT': -66, 'BELOW': -66, 'COMMA': -66, 'FROM': -66, 'RBRACE': -66, 'WITHIN': -66, '_NL': -66},
    {'TO': 216},
    {'ABOVE': 111, 'AND': 121, 'AT': 112, 'BELOW': 113, 'CODE': 53, 'COMMA': -102, 'COMMA_NUMBER': 54, 'FROM': 114, 'LPAR': 55, 'MINUS': 56, 'NAME': 57, 'NUMBER': 58, 'RBRACE': -102, 'WITHIN': 116, '_NL': -102, '__expect_star_7': 217, '__omit_star_6': 218, 'atom': 59, 'clause': 118, 'expr': 119, 'is': 219, 'power': 61, 'product': 62, 'sum': 63, 'unary': 64},
    {'ABOVE': -64, 'AT': -64, 'BELOW': -64, 'COMMA': -64, 'FROM': -64, 'RBRACE': -64, 'WITHIN': -64, '_NL': -64},
    {'ABOVE': -6, 'AT': -6, 'BELOW': -6, 'COMMA': -6, 'FROM': -6, 'RBRACE': -6, 'WITHIN': -6, '_NL': -6},
    {'ABOVE': 111, 'AT': 112, 'BELOW': 113, 'COMMA': -103, 'FROM': 114, 'RBRACE': -103, 'WITHIN': 116, '_NL': -103, 'clause': 172},
    {'ABOVE': -21, 'AND': -21, 'AT': -21, 'BELOW': -21, 'CODE': -21, 'COMMA': -21, 'COMMA_NUMBER': -21, 'FROM': -21, 'LPAR': -21, 'MINUS': -21, 'NAME': -21, 'NUMBER': -21, 'RBRACE': -21, 'WITHIN': -21, '_NL': -21},
    {'NAME': 15, 'path': 220},
    {'COMMA': -120, 'RBRACE': -120, '_NL': -120},
    {'COMMA': -139, 'RBRACE': -139, '_NL': -139},
    {'AND': -17, 'LBRACE': -17},
    {'COMMA': -60, 'RBRACE': -60, '_NL': -60},
    {'ALLOW': 1, 'AMPLIFIER': 2, 'COUPLING': 3, 'DESIGN': 4, 'DRIVER': 5, 'EXPECT': 6, 'FIT': 7, 'INCLUDE': 8, 'INPUT': 9, 'KIND': 10, 'LEG': 11, 'LET': 12, 'LIMIT': 13, 'LPAR': 14, 'NAME': 15, 'NETWORK': 16, 'OMIT': 17, 'PAD': 18, 'POSTS': 19, 'RBRACE': 221, 'SET': 20, 'TESTPOINT': 21, 'USE': 22, 'VARIANT': 23, '__body_star_8': 222, 'allow': 26, 'amplifier': 27, 'coupling': 28, 'design': 29, 'driver': 30, 'entry': 223, 'expect': 32, 'fit': 33, 'group': 34, 'include': 35, 'input': 36, 'leg': 37, 'let': 38, 'limit': 39, 'network': 40, 'omit': 41, 'part': 42, 'path': 43, 'posts': 44, 'set': 45, 'station': 47, 'testpoint': 48, 'use': 49, 'variant': 50, 'walk': 51},
    {'ALLOW': 1, 'AMPLIFIER': 2, 'COUPLING': 3, 'DESIGN': 4, 'DRIVER': 5, 'EXPECT': 6, 'FIT': 7, 'INCLUDE': 8, 'INPUT': 9, 'KIND': 10, 'LEG': 11, 'LET': 12, 'LIMIT': 13, 'LPAR': 14, 'NAME': 15, 'NETWORK': 16, 'OMIT': 17, 'PAD': 18, 'POSTS': 19, 'RBRACE': 224, 'SET': 20, 'TESTPOINT': 21, 'USE': 22, 'VARIANT': 23, 'allow': 26, 'amplifier': 27, 'coupling': 28, 'design': 29, 'driver': 30, 'entry': 225, 'expect': 32, 'fit': 33, 'group': 34, 'include': 35, 'input': 36, 'leg': 37, 'let': 38, 'limit': 39, 'network': 40, 'omit': 41, 'part': 42, 'path': 43, 'posts': 44, 'set': 45, 'station': 47, 'testpoint': 48, 'use': 49, 'variant': 50, 'walk': 51},
    {'COMMA': 212, 'RBRACE': 226, '_NL': 214, '_sep': 227},
    {'NAME': 228},
    {'COMMA': -127, 'RBRACE': -127, '_NL': -127},
    {'COMMA': -129, 'RBRACE': -129, '_NL': -129},
    {'ARROW': -115, 'COMMA': -115, 'RBRACE': -115, 'RPAR': -115, 'VBAR': -115, '_NL': -115},
    {'RPAR': 229, 'VBAR': 192},
    {'RPAR': 230, 'VBAR': 194, '_NL': 231},
    {'LPAR': 14, 'NAME': 15, 'PAD': 18, 'chain': 232, 'group': 34, 'path': 43, 'station': 78},
    {'RPAR': -12, 'VBAR': -12, '_NL': -12},
    {'ARROW': -118, 'COMMA': -118, 'RBRACE': -118, 'RPAR': -118, 'VBAR': -118, '_NL': -118},
    {'LPAR': 14, 'NAME': 15, 'PAD': 18, '_NL': 233, 'chain': 234, 'group': 34, 'path': 43, 'station': 78},
    {'ARROW': -117, 'COMMA': -117, 'RBRACE': -117, 'RPAR': -117, 'VBAR': -117, '_NL': -117},
    {'LPAR': 14, 'NAME': 15, 'PAD': 18, '_NL': 235, 'chain': 236, 'group': 34, 'path': 43, 'station': 78},
    {'RPAR': 237, 'VBAR': 238},
    {'ABOVE': -24, 'AND': -24, 'ARROW': -24, 'AT': -24, 'BECAUSE': -24, 'BELOW': -24, 'CODE': -24, 'COMMA': -24, 'COMMA_NUMBER': -24, 'DOT': -24, 'EQUAL': -24, 'FROM': -24, 'LPAR': -24, 'MINUS': -24, 'NAME': -24, 'NUMBER': -24, 'RBRACE': -24, 'RPAR': -24, 'VBAR': -24, 'WITHIN': -24, '_NL': -24},
    {'COMMA': 239, 'RPAR': 240, '__network_star_4': 241},
    {'COMMA': -151, 'RBRACE': -151, '_NL': -151},
    {'COMMA': -166, 'LBRACE': 108, 'RBRACE': -166, '_NL': -166, 'block': 242},
    {'COMMA': -167, 'RBRACE': -167, '_NL': -167},
    {'ARROW': -28, 'COMMA': -28, 'RBRACE': -28, 'RPAR': -28, 'VBAR': -28, '_NL': -28},
    {'STRING': 243},
    {'COMMA': -34, 'RBRACE': -34, '_NL': -34},
    {'COMMA': -68, 'RBRACE': -68, '_NL': -68},
    {'COMMA': -126, 'RBRACE': -126, '_NL': -126},
    {'COMMA': -125, 'RBRACE': -125, '_NL': -125},
    {'COMMA': -48, 'RBRACE': -48, '_NL': -48},
    {'CODE': 53, 'COMMA_NUMBER': 54, 'LPAR': 55, 'MINUS': 56, 'NAME': 159, 'NUMBER': 58, 'RBRACE': 244, 'atom': 59, 'expr': 163, 'item': 245, 'power': 61, 'product': 62, 'sum': 63, 'unary': 64},
    {'COMMA': 212, 'RBRACE': 246, '_NL': 214, '_sep': 215},
    {'COMMA': -50, 'RBRACE': -50, '_NL': -50},
    {'COMMA': 212, 'RBRACE': 247, '_NL': 214, '_sep': 248},
    {'ALLOW': -30, 'AMPLIFIER': -30, 'CODE': -30, 'COMMA_NUMBER': -30, 'COUPLING': -30, 'DESIGN': -30, 'DRIVER': -30, 'EXPECT': -30, 'FIT': -30, 'INCLUDE': -30, 'INPUT': -30, 'KIND': -30, 'LEG': -30, 'LET': -30, 'LIMIT': -30, 'LPAR': -30, 'MINUS': -30, 'NAME': -30, 'NETWORK': -30, 'NUMBER': -30, 'OMIT': -30, 'PAD': -30, 'POSTS': -30, 'RBRACE': -30, 'SET': -30, 'TESTPOINT': -30, 'USE': -30, 'VARIANT': -30, '_NL': 249},
    {'COMMA': -51, 'RBRACE': -51, '_NL': -51},
    {'ALLOW': -31, 'AMPLIFIER': -31, 'CODE': -31, 'COMMA_NUMBER': -31, 'COUPLING': -31, 'DESIGN': -31, 'DRIVER': -31, 'EXPECT': -31, 'FIT': -31, 'INCLUDE': -31, 'INPUT': -31, 'KIND': -31, 'LEG': -31, 'LET': -31, 'LIMIT': -31, 'LPAR': -31, 'MINUS': -31, 'NAME': -31, 'NETWORK': -31, 'NUMBER': -31, 'OMIT': -31, 'PAD': -31, 'POSTS': -31, 'RBRACE': -31, 'SET': -31, 'TESTPOINT': -31, 'USE': -31, 'VARIANT': -31},
    {'CODE': -1, 'COMMA_NUMBER': -1, 'LPAR': -1, 'MINUS': -1, 'NAME': -1, 'NUMBER': -1, 'RBRACE': -1},
    {'CODE': 53, 'COMMA_NUMBER': 54, 'LPAR': 55, 'MINUS': 56, 'NAME': 57, 'NUMBER': 58, 'atom': 59, 'expr': 250, 'power': 61, 'product': 62, 'sum': 63, 'unary': 64},
    {'ABOVE': 111, 'AT': 112, 'BELOW': 113, 'COMMA': -101, 'FROM': 114, 'RBRACE': -101, 'WITHIN': 116, '_NL': -101, 'clause': 172},
    {'ABOVE': 111, 'AND': 175, 'AT': 112, 'BELOW': 113, 'CODE': 53, 'COMMA': -98, 'COMMA_NUMBER': 54, 'FROM': 114, 'LPAR': 55, 'MINUS': 56, 'NAME': 57, 'NUMBER': 58, 'RBRACE': -98, 'WITHIN': 116, '_NL': -98, '__expect_star_7': 251, 'atom': 59, 'clause': 118, 'expr': 119, 'is': 252, 'power': 61, 'product': 62, 'sum': 63, 'unary': 64},
    {'ABOVE': 111, 'AT': 112, 'BELOW': 113, 'COMMA': -100, 'FROM': 114, 'RBRACE': -100, 'WITHIN': 116, '_NL': -100, '__expect_star_7': 253, 'clause': 118},
    {'ABOVE': -22, 'AND': -22, 'AT': -22, 'BELOW': -22, 'CODE': -22, 'COMMA': -22, 'COMMA_NUMBER': -22, 'FROM': -22, 'LPAR': -22, 'MINUS': -22, 'NAME': -22, 'NUMBER': -22, 'RBRACE': -22, 'WITHIN': -22, '_NL': -22},
    {'COMMA': -56, 'RBRACE': -56, '_NL': -56},
    {'ALLOW': 1, 'AMPLIFIER': 2, 'COUPLING': 3, 'DESIGN': 4, 'DRIVER': 5, 'EXPECT': 6, 'FIT': 7, 'INCLUDE': 8, 'INPUT': 9, 'KIND': 10, 'LEG': 11, 'LET': 12, 'LIMIT': 13, 'LPAR': 14, 'NAME': 15, 'NETWORK': 16, 'OMIT': 17, 'PAD': 18, 'POSTS': 19, 'RBRACE': 254, 'SET': 20, 'TESTPOINT': 21, 'USE': 22, 'VARIANT': 23, 'allow': 26, 'amplifier': 27, 'coupling': 28, 'design': 29, 'driver': 30, 'entry': 255, 'expect': 32, 'fit': 33, 'group': 34, 'include': 35, 'input': 36, 'leg': 37, 'let': 38, 'limit': 39, 'network': 40, 'omit': 41, 'part': 42, 'path': 43, 'posts': 44, 'set': 45, 'station': 47, 'testpoint': 48, 'use': 49, 'variant': 50, 'walk': 51},
    {'COMMA': 212, 'RBRACE': 256, '_NL': 214, '_sep': 227},
    {'COMMA': -58, 'RBRACE': -58, '_NL': -58},
    {'COMMA': 212, 'RBRACE': 257, '_NL': 214, '_sep': 258},
    {'COMMA': -59, 'RBRACE': -59, '_NL': -59},
    {'ALLOW': -3, 'AMPLIFIER': -3, 'COUPLING': -3, 'DESIGN': -3, 'DRIVER': -3, 'EXPECT': -3, 'FIT': -3, 'INCLUDE': -3, 'INPUT': -3, 'KIND': -3, 'LEG': -3, 'LET': -3, 'LIMIT': -3, 'LPAR': -3, 'NAME': -3, 'NETWORK': -3, 'OMIT': -3, 'PAD': -3, 'POSTS': -3, 'RBRACE': -3, 'SET': -3, 'TESTPOINT': -3, 'USE': -3, 'VARIANT': -3},
    {'AND': -18, 'LBRACE': -18},
    {'ARROW': -114, 'COMMA': -114, 'RBRACE': -114, 'RPAR': -114, 'VBAR': -114, '_NL': -114},
    {'ARROW': -113, 'COMMA': -113, 'RBRACE': -113, 'RPAR': -113, 'VBAR': -113, '_NL': -113},
    {'RPAR': 259, 'VBAR': 238},
    {'RPAR': -11, 'VBAR': -11, '_NL': -11},
    {'LPAR': 14, 'NAME': 15, 'PAD': 18, 'chain': 260, 'group': 34, 'path': 43, 'station': 78},
    {'RPAR': -10, 'VBAR': -10, '_NL': -10},
    {'LPAR': 14, 'NAME': 15, 'PAD': 18, 'chain': 261, 'group': 34, 'path': 43, 'station': 78},
    {'RPAR': -16, 'VBAR': -16, '_NL': -16},
    {'ARROW': -116, 'COMMA': -116, 'RBRACE': -116, 'RPAR': -116, 'VBAR': -116, '_NL': -116},
    {'LPAR': 14, 'NAME': 15, 'PAD': 18, '_NL': 262, 'chain': 263, 'group': 34, 'path': 43, 'station': 78},
    {'NAME': 264},
    {'GIVEN': 265, 'LBRACE': 127, 'body': 266, 'given': 267},
    {'COMMA': 268, 'RPAR': 269},
    {'COMMA': -165, 'RBRACE': -165, '_NL': -165},
    {'COMMA': -32, 'RBRACE': -32, '_NL': -32},
    {'COMMA': -46, 'RBRACE': -46, '_NL': -46},
    {'COMMA': 212, 'RBRACE': 270, '_NL': 214, '_sep': 248},
    {'COMMA': -47, 'RBRACE': -47, '_NL': -47},
    {'COMMA': -49, 'RBRACE': -49, '_NL': -49},
    {'CODE': -2, 'COMMA_NUMBER': -2, 'LPAR': -2, 'MINUS': -2, 'NAME': -2, 'NUMBER': -2, 'RBRACE': -2},
    {'ALLOW': -29, 'AMPLIFIER': -29, 'CODE': -29, 'COMMA_NUMBER': -29, 'COUPLING': -29, 'DESIGN': -29, 'DRIVER': -29, 'EXPECT': -29, 'FIT': -29, 'INCLUDE': -29, 'INPUT': -29, 'KIND': -29, 'LEG': -29, 'LET': -29, 'LIMIT': -29, 'LPAR': -29, 'MINUS': -29, 'NAME': -29, 'NETWORK': -29, 'NUMBER': -29, 'OMIT': -29, 'PAD': -29, 'POSTS': -29, 'RBRACE': -29, 'SET': -29, 'TESTPOINT': -29, 'USE': -29, 'VARIANT': -29},
    {'ABOVE': -67, 'AT': -67, 'BELOW': -67, 'COMMA': -67, 'FROM': -67, 'RBRACE': -67, 'WITHIN': -67, '_NL': -67},
    {'ABOVE': 111, 'AT': 112, 'BELOW': 113, 'COMMA': -97, 'FROM': 114, 'RBRACE': -97, 'WITHIN': 116, '_NL': -97, 'clause': 172},
    {'ABOVE': 111, 'AT': 112, 'BELOW': 113, 'COMMA': -96, 'FROM': 114, 'RBRACE': -96, 'WITHIN': 116, '_NL': -96, '__expect_star_7': 271, 'clause': 118},
    {'ABOVE': 111, 'AT': 112, 'BELOW': 113, 'COMMA': -99, 'FROM': 114, 'RBRACE': -99, 'WITHIN': 116, '_NL': -99, 'clause': 172},
    {'COMMA': -54, 'RBRACE': -54, '_NL': -54},
    {'COMMA': 212, 'RBRACE': 272, '_NL': 214, '_sep': 258},
    {'COMMA': -55, 'RBRACE': -55, '_NL': -55},
    {'COMMA': -57, 'RBRACE': -57, '_NL': -57},
    {'ALLOW': -4, 'AMPLIFIER': -4, 'COUPLING': -4, 'DESIGN': -4, 'DRIVER': -4, 'EXPECT': -4, 'FIT': -4, 'INCLUDE': -4, 'INPUT': -4, 'KIND': -4, 'LEG': -4, 'LET': -4, 'LIMIT': -4, 'LPAR': -4, 'NAME': -4, 'NETWORK': -4, 'OMIT': -4, 'PAD': -4, 'POSTS': -4, 'RBRACE': -4, 'SET': -4, 'TESTPOINT': -4, 'USE': -4, 'VARIANT': -4},
    {'ARROW': -112, 'COMMA': -112, 'RBRACE': -112, 'RPAR': -112, 'VBAR': -112, '_NL': -112},
    {'RPAR': -9, 'VBAR': -9, '_NL': -9},
    {'RPAR': -15, 'VBAR': -15, '_NL': -15},
    {'LPAR': 14, 'NAME': 15, 'PAD': 18, 'chain': 273, 'group': 34, 'path': 43, 'station': 78},
    {'RPAR': -14, 'VBAR': -14, '_NL': -14},
    {'COMMA': -19, 'RPAR': -19},
    {'NAME': 274, 'param': 275},
    {'COMMA': -134, 'RBRACE': -134, '_NL': -134},
    {'LBRACE': 127, 'body': 276},
    {'NAME': 277},
    {'GIVEN': 265, 'LBRACE': 127, 'body': 278, 'given': 279},
    {'COMMA': -45, 'RBRACE': -45, '_NL': -45},
    {'ABOVE': 111, 'AT': 112, 'BELOW': 113, 'COMMA': -95, 'FROM': 114, 'RBRACE': -95, 'WITHIN': 116, '_NL': -95, 'clause': 172},
    {'COMMA': -53, 'RBRACE': -53, '_NL': -53},
    {'RPAR': -13, 'VBAR': -13, '_NL': -13},
    {'COMMA': -138, 'EQUAL': 280, 'LBRACE': -138},
    {'COMMA': 281, 'LBRACE': -111, '__given_star_5': 282},
    {'COMMA': -133, 'RBRACE': -133, '_NL': -133},
    {'COMMA': -20, 'RPAR': -20},
    {'COMMA': -132, 'RBRACE': -132, '_NL': -132},
    {'LBRACE': 127, 'body': 283},
    {'CODE': 53, 'COMMA_NUMBER': 54, 'LPAR': 55, 'MINUS': 56, 'NAME': 57, 'NUMBER': 58, 'atom': 59, 'expr': 284, 'power': 61, 'product': 62, 'sum': 63, 'unary': 64},
    {'NAME': 274, 'param': 285},
    {'COMMA': 286, 'LBRACE': -110},
    {'COMMA': -131, 'RBRACE': -131, '_NL': -131},
    {'COMMA': -137, 'LBRACE': -137},
    {'COMMA': -7, 'LBRACE': -7},
    {'NAME': 274, 'param': 287},
    {'COMMA': -8, 'LBRACE': -8},
)
