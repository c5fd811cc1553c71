"""Tables of a box's own file. Do not edit: made from the grammar by `python -m shuntwise.house.tables`.

They are as those of `tables.py`, which says what is what.
"""

from __future__ import annotations

from shuntwise.syntax.automaton import Tables

START, END = 0, 15
IGNORED = frozenset(['COMMENT', 'WS'])

TERMINALS: dict[str, str] = {
    'CODE': '[0-9]+(?:[RKMGLkmunpµμ][0-9]+[BCDGJKM]?|R[0-9]+F|[RLkKMGmunpµμ])(?!\\w)',
    'PAD': '(?!non-polar(?!\\w))[^\\W\\d]\\w*(?:\\.[^\\W\\d]\\w*)?(?:\\+|-(?!-))',
    'BENCH': 'bench(?=[ \t\xa0]*\\{)',
    'COMMA_NUMBER': '[0-9]+,[0-9]+(?:[eE][+-]?[0-9]+)?',
    'NUMBER': '(?:[0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)(?:[eE][+-]?[0-9]+(?!\\w))?',
    '_NL': '\r?\n(?:[ \t\xa0]*(?:#[^\n]*)?\r?\n)*',
    'NAME': 'non-polar(?!\\w)|[^\\W\\d]\\w*',
    'STRING': '"[^"\r\n]*"',
    'WS': '[ \t\x0c\xa0]+',
    'COMMENT': '#[^\n]*',
    'MEASURED': 'measured(?!\\w)',
    'READING': 'reading(?!\\w)',
    'VARIANT': 'variant',
    'BESIDE': 'beside(?!\\w)',
    'REWORK': 'rework(?!\\w)',
    'SWEEP': 'sweep(?!\\w)',
    'NOTE': 'note(?!\\w)',
    'INTO': 'into',
    'BOX': 'box(?!\\w)',
    'AT': 'at',
    'OF': 'of',
    'TO': 'to',
    'CIRCUMFLEX': '\\^',
    'COLON': ':',
    'COMMA': ',',
    'DOT': '\\.',
    'LBRACE': '\\{',
    'LPAR': '\\(',
    'MINUS': '\\-',
    'PERCENT': '%',
    'PLUS': '\\+',
    'RBRACE': '\\}',
    'RPAR': '\\)',
    'SLASH': '/',
    'STAR': '\\*',
}

KEYWORDS: dict[str, str] = {
    'variant': 'VARIANT',
    'into': 'INTO',
    'at': 'AT',
    'of': 'OF',
    'to': 'TO',
}

RULES: tuple[tuple[str, str | None, int, tuple[int, ...], bool], ...] = (
    ('__block_star_17', None, 2, (0, 1), False),  # __block_star_17: item _sep
    ('__block_star_17', None, 3, (0, 1, 2), False),  # __block_star_17: __block_star_17 item _sep
    ('__box_file_star_19', None, 2, (0,), False),  # __box_file_star_19: box_line _NL
    ('__box_file_star_19', None, 3, (0, 1), False),  # __box_file_star_19: __box_file_star_19 box_line _NL
    ('__path_star_18', None, 2, (1,), False),  # __path_star_18: DOT NAME
    ('__path_star_18', None, 3, (0, 2), False),  # __path_star_18: __path_star_18 DOT NAME
    ('__together_star_10', None, 2, (1,), False),  # __together_star_10: PLUS path
    ('__together_star_10', None, 3, (0, 2), False),  # __together_star_10: __together_star_10 PLUS path
    ('_sep', None, 2, (), False),  # _sep: COMMA _NL
    ('_sep', None, 1, (), False),  # _sep: COMMA
    ('_sep', None, 1, (), False),  # _sep: _NL
    ('atom', 'number', 2, (0, 1), False),  # atom: NUMBER NAME
    ('atom', 'number', 2, (0, 1), False),  # atom: NUMBER PERCENT
    ('atom', 'number', 1, (0,), False),  # atom: NUMBER
    ('atom', 'number', 2, (0, 1), False),  # atom: COMMA_NUMBER NAME
    ('atom', 'number', 2, (0, 1), False),  # atom: COMMA_NUMBER PERCENT
    ('atom', 'number', 1, (0,), False),  # atom: COMMA_NUMBER
    ('atom', 'code', 1, (0,), False),  # atom: CODE
    ('atom', 'name', 1, (0,), False),  # atom: NAME
    ('atom', 'group_expr', 3, (1,), False),  # atom: LPAR expr RPAR
    ('bench', 'bench', 2, (0, 1), False),  # bench: BENCH block
    ('beside', 'beside', 2, (0, 1), False),  # beside: BESIDE STRING
    ('between', 'at_pads', 2, (1,), False),  # between: AT path
    ('between', 'from_point', 3, (0, 2), False),  # between: reading_point TO reading_point
    ('block', 'block', 5, (2, 3), False),  # block: LBRACE _NL __block_star_17 item RBRACE
    ('block', 'block', 4, (2,), False),  # block: LBRACE _NL __block_star_17 RBRACE
    ('block', 'block', 4, (2,), False),  # block: LBRACE _NL item RBRACE
    ('block', 'block', 3, (), False),  # block: LBRACE _NL RBRACE
    ('block', 'block', 4, (1, 2), False),  # block: LBRACE __block_star_17 item RBRACE
    ('block', 'block', 3, (1,), False),  # block: LBRACE __block_star_17 RBRACE
    ('block', 'block', 3, (1,), False),  # block: LBRACE item RBRACE
    ('block', 'block', 2, (), False),  # block: LBRACE RBRACE
    ('box', 'box', 4, (0, 1, 3), False),  # box: BOX box_name OF STRING
    ('box_file', 'box_file', 2, (1,), False),  # box_file: _NL __box_file_star_19
    ('box_file', 'box_file', 1, (), False),  # box_file: _NL
    ('box_file', 'box_file', 1, (0,), False),  # box_file: __box_file_star_19
    ('box_file', 'box_file', 0, (), False),  # box_file: nothing
    ('box_line', 'box_line', 1, (0,), True),  # box_line: box
    ('box_line', 'box_line', 1, (0,), True),  # box_line: bench
    ('box_line', 'box_line', 1, (0,), True),  # box_line: in_variant
    ('box_line', 'box_line', 1, (0,), True),  # box_line: measured
    ('box_line', 'box_line', 1, (0,), True),  # box_line: reading
    ('box_line', 'box_line', 1, (0,), True),  # box_line: sweep
    ('box_line', 'box_line', 1, (0,), True),  # box_line: beside
    ('box_line', 'box_line', 1, (0,), True),  # box_line: rework
    ('box_line', 'box_line', 1, (0,), True),  # box_line: remark
    ('box_name', 'box_name', 1, (0,), False),  # box_name: NUMBER
    ('box_name', 'box_name', 1, (0,), False),  # box_name: NAME
    ('box_name', 'box_name', 1, (0,), False),  # box_name: CODE
    ('box_name', 'box_name', 1, (0,), False),  # box_name: STRING
    ('expr', 'expr', 1, (0,), True),  # expr: sum
    ('in_variant', 'in_variant', 2, (0, 1), False),  # in_variant: VARIANT together
    ('into', 'into', 2, (1,), False),  # into: INTO path
    ('item', 'bare', 1, (0,), False),  # item: expr
    ('item', 'keyed', 2, (0, 1), False),  # item: NAME expr
    ('item', 'texted', 2, (0, 1), False),  # item: NAME STRING
    ('loads', 'loads', 2, (0, 1), False),  # loads: path NAME
    ('measured', 'measured', 4, (0, 1, 2, 3), False),  # measured: MEASURED path expr block
    ('measured', 'measured', 3, (0, 1, 2), False),  # measured: MEASURED path expr
    ('path', 'path', 2, (0, 1), False),  # path: NAME __path_star_18
    ('path', 'path', 1, (0,), False),  # path: NAME
    ('power', 'power', 1, (0,), True),  # power: unary
    ('power', 'raise_to', 3, (0, 2), False),  # power: unary CIRCUMFLEX power
    ('product', 'product', 1, (0,), True),  # product: power
    ('product', 'multiply', 3, (0, 2), False),  # product: product STAR power
    ('product', 'divide', 3, (0, 2), False),  # product: product SLASH power
    ('reading', 'reading', 11, (0, 1, 2, 4, 6, 8, 10), False),  # reading: READING NAME between COMMA loads COMMA into COMMA expr COLON expr
    ('reading', 'reading', 9, (0, 1, 2, 4, 6, 8), False),  # reading: READING NAME between COMMA loads COMMA into COLON expr
    ('reading', 'reading', 9, (0, 1, 2, 4, 6, 8), False),  # reading: READING NAME between COMMA loads COMMA expr COLON expr
    ('reading', 'reading', 7, (0, 1, 2, 4, 6), False),  # reading: READING NAME between COMMA loads COLON expr
    ('reading_point', 'pad', 1, (0,), False),  # reading_point: PAD
    ('reading_point', 'reading_point', 1, (0,), True),  # reading_point: path
    ('remark', 'remark', 2, (0, 1), False),  # remark: NOTE STRING
    ('rework', 'rework', 2, (0, 1), False),  # rework: REWORK STRING
    ('sum', 'sum', 1, (0,), True),  # sum: product
    ('sum', 'add', 3, (0, 2), False),  # sum: sum PLUS product
    ('sum', 'subtract', 3, (0, 2), False),  # sum: sum MINUS product
    ('sweep', 'sweep', 6, (0, 1, 3, 5), False),  # sweep: SWEEP STRING COMMA loads COMMA into
    ('sweep', 'sweep', 4, (0, 1, 3), False),  # sweep: SWEEP STRING COMMA loads
    ('together', 'together', 2, (0, 1), False),  # together: path __together_star_10
    ('together', 'together', 1, (0,), False),  # together: path
    ('unary', 'unary', 1, (0,), True),  # unary: atom
    ('unary', 'negate', 2, (1,), False),  # unary: MINUS unary
)

STATES: tuple[dict[str, int], ...] = (
    {'$END': -37, 'BENCH': 1, 'BESIDE': 2, 'BOX': 3, 'MEASURED': 4, 'NOTE': 5, 'READING': 6, 'REWORK': 7, 'SWEEP': 8, 'VARIANT': 9, '_NL': 10, '__box_file_star_19': 11, 'bench': 12, 'beside': 13, 'box': 14, 'box_file': 15, 'box_line': 16, 'in_variant': 17, 'measured': 18, 'reading': 19, 'remark': 20, 'rework': 21, 'sweep': 22},
    {'LBRACE': 23, 'block': 24},
    {'STRING': 25},
    {'CODE': 26, 'NAME': 27, 'NUMBER': 28, 'STRING': 29, 'box_name': 30},
    {'NAME': 31, 'path': 32},
    {'STRING': 33},
    {'NAME': 34},
    {'STRING': 35},
    {'STRING': 36},
    {'NAME': 31, 'path': 37, 'together': 38},
    {'$END': -35, 'BENCH': 1, 'BESIDE': 2, 'BOX': 3, 'MEASURED': 4, 'NOTE': 5, 'READING': 6, 'REWORK': 7, 'SWEEP': 8, 'VARIANT': 9, '__box_file_star_19': 39, 'bench': 12, 'beside': 13, 'box': 14, 'box_line': 16, 'in_variant': 17, 'measured': 18, 'reading': 19, 'remark': 20, 'rework': 21, 'sweep': 22},
    {'$END': -36, 'BENCH': 1, 'BESIDE': 2, 'BOX': 3, 'MEASURED': 4, 'NOTE': 5, 'READING': 6, 'REWORK': 7, 'SWEEP': 8, 'VARIANT': 9, 'bench': 12, 'beside': 13, 'box': 14, 'box_line': 40, 'in_variant': 17, 'measured': 18, 'reading': 19, 'remark': 20, 'rework': 21, 'sweep': 22},
    {'_NL': -39},
    {'_NL': -44},
    {'_NL': -38},
    {},
    {'_NL': 41},
    {'_NL': -40},
    {'_NL': -41},
    {'_NL': -42},
    {'_NL': -46},
    {'_NL': -45},
    {'_NL': -43},
    {'CODE': 42, 'COMMA_NUMBER': 43, 'LPAR': 44, 'MINUS': 45, 'NAME': 46, 'NUMBER': 47, 'RBRACE': 48, '_NL': 49, '__block_star_17': 50, 'atom': 51, 'expr': 52, 'item': 53, 'power': 54, 'product': 55, 'sum': 56, 'unary': 57},
    {'_NL': -21},
    {'_NL': -22},
    {'OF': -49},
    {'OF': -48},
    {'OF': -47},
    {'OF': -50},
    {'OF': 58},
    {'CODE': -61, 'COLON': -61, 'COMMA': -61, 'COMMA_NUMBER': -61, 'DOT': 59, 'LPAR': -61, 'MINUS': -61, 'NAME': -61, 'NUMBER': -61, 'PLUS': -61, 'TO': -61, '_NL': -61, '__path_star_18': 60},
    {'CODE': 42, 'COMMA_NUMBER': 43, 'LPAR': 44, 'MINUS': 45, 'NAME': 61, 'NUMBER': 47, 'atom': 51, 'expr': 62, 'power': 54, 'product': 55, 'sum': 56, 'unary': 57},
    {'_NL': -73},
    {'AT': 63, 'NAME': 31, 'PAD': 64, 'between': 65, 'path': 66, 'reading_point': 67},
    {'_NL': -74},
    {'COMMA': 68},
    {'PLUS': 69, '_NL': -81, '__together_star_10': 70},
    {'_NL': -52},
    {'$END': -34, 'BENCH': 1, 'BESIDE': 2, 'BOX': 3, 'MEASURED': 4, 'NOTE': 5, 'READING': 6, 'REWORK': 7, 'SWEEP': 8, 'VARIANT': 9, 'bench': 12, 'beside': 13, 'box': 14, 'box_line': 40, 'in_variant': 17, 'measured': 18, 'reading': 19, 'remark': 20, 'rework': 21, 'sweep': 22},
    {'_NL': 71},
    {'$END': -3, 'BENCH': -3, 'BESIDE': -3, 'BOX': -3, 'MEASURED': -3, 'NOTE': -3, 'READING': -3, 'REWORK': -3, 'SWEEP': -3, 'VARIANT': -3},
    {'CIRCUMFLEX': -18, 'COLON': -18, 'COMMA': -18, 'LBRACE': -18, 'MINUS': -18, 'PLUS': -18, 'RBRACE': -18, 'RPAR': -18, 'SLASH': -18, 'STAR': -18, '_NL': -18},
    {'CIRCUMFLEX': -17, 'COLON': -17, 'COMMA': -17, 'LBRACE': -17, 'MINUS': -17, 'NAME': 72, 'PERCENT': 73, 'PLUS': -17, 'RBRACE': -17, 'RPAR': -17, 'SLASH': -17, 'STAR': -17, '_NL': -17},
    {'CODE': 42, 'COMMA_NUMBER': 43, 'LPAR': 44, 'MINUS': 45, 'NAME': 61, 'NUMBER': 47, 'atom': 51, 'expr': 74, 'power': 54, 'product': 55, 'sum': 56, 'unary': 57},
    {'CODE': 42, 'COMMA_NUMBER': 43, 'LPAR': 44, 'MINUS': 45, 'NAME': 61, 'NUMBER': 47, 'atom': 51, 'unary': 75},
    {'CIRCUMFLEX': -19, 'CODE': 42, 'COMMA': -19, 'COMMA_NUMBER': 43, 'LPAR': 44, 'MINUS': 45, 'NAME': 61, 'NUMBER': 47, 'PLUS': -19, 'RBRACE': -19, 'SLASH': -19, 'STAR': -19, 'STRING': 76, '_NL': -19, 'atom': 51, 'expr': 77, 'power': 54, 'product': 55, 'sum': 56, 'unary': 57},
    {'CIRCUMFLEX': -14, 'COLON': -14, 'COMMA': -14, 'LBRACE': -14, 'MINUS': -14, 'NAME': 78, 'PERCENT': 79, 'PLUS': -14, 'RBRACE': -14, 'RPAR': -14, 'SLASH': -14, 'STAR': -14, '_NL': -14},
    {'_NL': -32},
    {'CODE': 42, 'COMMA_NUMBER': 43, 'LPAR': 44, 'MINUS': 45, 'NAME': 46, 'NUMBER': 47, 'RBRACE': 80, '__block_star_17': 81, 'atom': 51, 'expr': 52, 'item': 82, 'power': 54, 'product': 55, 'sum': 56, 'unary': 57},
    {'CODE': 42, 'COMMA_NUMBER': 43, 'LPAR': 44, 'MINUS': 45, 'NAME': 46, 'NUMBER': 47, 'RBRACE': 83, 'atom': 51, 'expr': 52, 'item': 84, 'power': 54, 'product': 55, 'sum': 56, 'unary': 57},
    {'CIRCUMFLEX': -82, 'COLON': -82, 'COMMA': -82, 'LBRACE': -82, 'MINUS': -82, 'PLUS': -82, 'RBRACE': -82, 'RPAR': -82, 'SLASH': -82, 'STAR': -82, '_NL': -82},
    {'COMMA': -54, 'RBRACE': -54, '_NL': -54},
    {'COMMA': 85, 'RBRACE': 86, '_NL': 87, '_sep': 88},
    {'COLON': -64, 'COMMA': -64, 'LBRACE': -64, 'MINUS': -64, 'PLUS': -64, 'RBRACE': -64, 'RPAR': -64, 'SLASH': -64, 'STAR': -64, '_NL': -64},
    {'COLON': -75, 'COMMA': -75, 'LBRACE': -75, 'MINUS': -75, 'PLUS': -75, 'RBRACE': -75, 'RPAR': -75, 'SLASH': 89, 'STAR': 90, '_NL': -75},
    {'COLON': -51, 'COMMA': -51, 'LBRACE': -51, 'MINUS': 91, 'PLUS': 92, 'RBRACE': -51, 'RPAR': -51, '_NL': -51},
    {'CIRCUMFLEX': 93, 'COLON': -62, 'COMMA': -62, 'LBRACE': -62, 'MINUS': -62, 'PLUS': -62, 'RBRACE': -62, 'RPAR': -62, 'SLASH': -62, 'STAR': -62, '_NL': -62},
    {'STRING': 94},
    {'NAME': 95},
    {'CODE': -60, 'COLON': -60, 'COMMA': -60, 'COMMA_NUMBER': -60, 'DOT': 96, 'LPAR': -60, 'MINUS': -60, 'NAME': -60, 'NUMBER': -60, 'PLUS': -60, 'TO': -60, '_NL': -60},
    {'CIRCUMFLEX': -19, 'COLON': -19, 'COMMA': -19, 'LBRACE': -19, 'MINUS': -19, 'PLUS': -19, 'RBRACE': -19, 'RPAR': -19, 'SLASH': -19, 'STAR': -19, '_NL': -19},
    {'LBRACE': 23, '_NL': -59, 'block': 97},
    {'NAME': 31, 'path': 98},
    {'COMMA': -71, 'TO': -71},
    {'COMMA': 99},
    {'COMMA': -72, 'TO': -72},
    {'TO': 100},
    {'NAME': 31, 'loads': 101, 'path': 102},
    {'NAME': 31, 'path': 103},
    {'PLUS': 104, '_NL': -80},
    {'$END': -4, 'BENCH': -4, 'BESIDE': -4, 'BOX': -4, 'MEASURED': -4, 'NOTE': -4, 'READING': -4, 'REWORK': -4, 'SWEEP': -4, 'VARIANT': -4},
    {'CIRCUMFLEX': -15, 'COLON': -15, 'COMMA': -15, 'LBRACE': -15, 'MINUS': -15, 'PLUS': -15, 'RBRACE': -15, 'RPAR': -15, 'SLASH': -15, 'STAR': -15, '_NL': -15},
    {'CIRCUMFLEX': -16, 'COLON': -16, 'COMMA': -16, 'LBRACE': -16, 'MINUS': -16, 'PLUS': -16, 'RBRACE': -16, 'RPAR': -16, 'SLASH': -16, 'STAR': -16, '_NL': -16},
    {'RPAR': 105},
    {'CIRCUMFLEX': -83, 'COLON': -83, 'COMMA': -83, 'LBRACE': -83, 'MINUS': -83, 'PLUS': -83, 'RBRACE': -83, 'RPAR': -83, 'SLASH': -83, 'STAR': -83, '_NL': -83},
    {'COMMA': -56, 'RBRACE': -56, '_NL': -56},
    {'COMMA': -55, 'RBRACE': -55, '_NL': -55},
    {'CIRCUMFLEX': -12, 'COLON': -12, 'COMMA': -12, 'LBRACE': -12, 'MINUS': -12, 'PLUS': -12, 'RBRACE': -12, 'RPAR': -12, 'SLASH': -12, 'STAR': -12, '_NL': -12},
    {'CIRCUMFLEX': -13, 'COLON': -13, 'COMMA': -13, 'LBRACE': -13, 'MINUS': -13, 'PLUS': -13, 'RBRACE': -13, 'RPAR': -13, 'SLASH': -13, 'STAR': -13, '_NL': -13},
    {'_NL': -28},
    {'CODE': 42, 'COMMA_NUMBER': 43, 'LPAR': 44, 'MINUS': 45, 'NAME': 46, 'NUMBER': 47, 'RBRACE': 106, 'atom': 51, 'expr': 52, 'item': 107, 'power': 54, 'product': 55, 'sum': 56, 'unary': 57},
    {'COMMA': 85, 'RBRACE': 108, '_NL': 87, '_sep': 88},
    {'_NL': -30},
    {'COMMA': 85, 'RBRACE': 109, '_NL': 87, '_sep': 110},
    {'CODE': -10, 'COMMA_NUMBER': -10, 'LPAR': -10, 'MINUS': -10, 'NAME': -10, 'NUMBER': -10, 'RBRACE': -10, '_NL': 111},
    {'_NL': -31},
    {'CODE': -11, 'COMMA_NUMBER': -11, 'LPAR': -11, 'MINUS': -11, 'NAME': -11, 'NUMBER': -11, 'RBRACE': -11},
    {'CODE': -1, 'COMMA_NUMBER': -1, 'LPAR': -1, 'MINUS': -1, 'NAME': -1, 'NUMBER': -1, 'RBRACE': -1},
    {'CODE': 42, 'COMMA_NUMBER': 43, 'LPAR': 44, 'MINUS': 45, 'NAME': 61, 'NUMBER': 47, 'atom': 51, 'power': 112, 'unary': 57},
    {'CODE': 42, 'COMMA_NUMBER': 43, 'LPAR': 44, 'MINUS': 45, 'NAME': 61, 'NUMBER': 47, 'atom': 51, 'power': 113, 'unary': 57},
    {'CODE': 42, 'COMMA_NUMBER': 43, 'LPAR': 44, 'MINUS': 45, 'NAME': 61, 'NUMBER': 47, 'atom': 51, 'power': 54, 'product': 114, 'unary': 57},
    {'CODE': 42, 'COMMA_NUMBER': 43, 'LPAR': 44, 'MINUS': 45, 'NAME': 61, 'NUMBER': 47, 'atom': 51, 'power': 54, 'product': 115, 'unary': 57},
    {'CODE': 42, 'COMMA_NUMBER': 43, 'LPAR': 44, 'MINUS': 45, 'NAME': 61, 'NUMBER': 47, 'atom': 51, 'power': 116, 'unary': 57},
    {'_NL': -33},
    {'CODE': -5, 'COLON': -5, 'COMMA': -5, 'COMMA_NUMBER': -5, 'DOT': -5, 'LPAR': -5, 'MINUS': -5, 'NAME': -5, 'NUMBER': -5, 'PLUS': -5, 'TO': -5, '_NL': -5},
    {'NAME': 117},
    {'_NL': -58},
    {'COMMA': -23},
    {'NAME': 31, 'loads': 118, 'path': 102},
    {'NAME': 31, 'PAD': 64, 'path': 66, 'reading_point': 119},
    {'COMMA': 120, '_NL': -79},
    {'NAME': 121},
    {'PLUS': -7, '_NL': -7},
    {'NAME': 31, 'path': 122},
    {'CIRCUMFLEX': -20, 'COLON': -20, 'COMMA': -20, 'LBRACE': -20, 'MINUS': -20, 'PLUS': -20, 'RBRACE': -20, 'RPAR': -20, 'SLASH': -20, 'STAR': -20, '_NL': -20},
    {'_NL': -26},
    {'COMMA': 85, 'RBRACE': 123, '_NL': 87, '_sep': 110},
    {'_NL': -27},
    {'_NL': -29},
    {'CODE': -2, 'COMMA_NUMBER': -2, 'LPAR': -2, 'MINUS': -2, 'NAME': -2, 'NUMBER': -2, 'RBRACE': -2},
    {'CODE': -9, 'COMMA_NUMBER': -9, 'LPAR': -9, 'MINUS': -9, 'NAME': -9, 'NUMBER': -9, 'RBRACE': -9},
    {'COLON': -66, 'COMMA': -66, 'LBRACE': -66, 'MINUS': -66, 'PLUS': -66, 'RBRACE': -66, 'RPAR': -66, 'SLASH': -66, 'STAR': -66, '_NL': -66},
    {'COLON': -65, 'COMMA': -65, 'LBRACE': -65, 'MINUS': -65, 'PLUS': -65, 'RBRACE': -65, 'RPAR': -65, 'SLASH': -65, 'STAR': -65, '_NL': -65},
    {'COLON': -77, 'COMMA': -77, 'LBRACE': -77, 'MINUS': -77, 'PLUS': -77, 'RBRACE': -77, 'RPAR': -77, 'SLASH': 89, 'STAR': 90, '_NL': -77},
    {'COLON': -76, 'COMMA': -76, 'LBRACE': -76, 'MINUS': -76, 'PLUS': -76, 'RBRACE': -76, 'RPAR': -76, 'SLASH': 89, 'STAR': 90, '_NL': -76},
    {'COLON': -63, 'COMMA': -63, 'LBRACE': -63, 'MINUS': -63, 'PLUS': -63, 'RBRACE': -63, 'RPAR': -63, 'SLASH': -63, 'STAR': -63, '_NL': -63},
    {'CODE': -6, 'COLON': -6, 'COMMA': -6, 'COMMA_NUMBER': -6, 'DOT': -6, 'LPAR': -6, 'MINUS': -6, 'NAME': -6, 'NUMBER': -6, 'PLUS': -6, 'TO': -6, '_NL': -6},
    {'COLON': 124, 'COMMA': 125},
    {'COMMA': -24},
    {'INTO': 126, 'into': 127},
    {'COLON': -57, 'COMMA': -57, '_NL': -57},
    {'PLUS': -8, '_NL': -8},
    {'_NL': -25},
    {'CODE': 42, 'COMMA_NUMBER': 43, 'LPAR': 44, 'MINUS': 45, 'NAME': 61, 'NUMBER': 47, 'atom': 51, 'expr': 128, 'power': 54, 'product': 55, 'sum': 56, 'unary': 57},
    {'CODE': 42, 'COMMA_NUMBER': 43, 'INTO': 126, 'LPAR': 44, 'MINUS': 45, 'NAME': 61, 'NUMBER': 47, 'atom': 51, 'expr': 129, 'into': 130, 'power': 54, 'product': 55, 'sum': 56, 'unary': 57},
    {'NAME': 31, 'path': 131},
    {'_NL': -78},
    {'_NL': -70},
    {'COLON': 132},
    {'COLON': 133, 'COMMA': 134},
    {'COLON': -53, 'COMMA': -53, '_NL': -53},
    {'CODE': 42, 'COMMA_NUMBER': 43, 'LPAR': 44, 'MINUS': 45, 'NAME': 61, 'NUMBER': 47, 'atom': 51, 'expr': 135, 'power': 54, 'product': 55, 'sum': 56, 'unary': 57},
    {'CODE': 42, 'COMMA_NUMBER': 43, 'LPAR': 44, 'MINUS': 45, 'NAME': 61, 'NUMBER': 47, 'atom': 51, 'expr': 136, 'power': 54, 'product': 55, 'sum': 56, 'unary': 57},
    {'CODE': 42, 'COMMA_NUMBER': 43, 'LPAR': 44, 'MINUS': 45, 'NAME': 61, 'NUMBER': 47, 'atom': 51, 'expr': 137, 'power': 54, 'product': 55, 'sum': 56, 'unary': 57},
    {'_NL': -69},
    {'_NL': -68},
    {'COLON': 138},
    {'CODE': 42, 'COMMA_NUMBER': 43, 'LPAR': 44, 'MINUS': 45, 'NAME': 61, 'NUMBER': 47, 'atom': 51, 'expr': 139, 'power': 54, 'product': 55, 'sum': 56, 'unary': 57},
    {'_NL': -67},
)

BOX = Tables(START, END, IGNORED, TERMINALS, KEYWORDS, RULES, STATES)
