"""A design's automaton as tables. Do not edit: made from the grammar by `python -m shuntwise.house.tables`.

`TERMINALS` are patterns in the order in which they are tried, `KEYWORDS` words that are names elsewhere. A rule is
its symbol, its node's name (None: its children go to the rule above), its length, the places of the children that
are kept, and whether a lone child stands for the node. A state leads by symbol to another, or (below zero) to the
rule ~n that is then reduced. `PART_KINDS` are the words that declare a part, each with an example of what follows.

The module is long because it is a table.
"""

from __future__ import annotations

from shuntwise.syntax.automaton import Tables

START, END = 0, 58
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
    'POINT': '[+-]?(?:[0-9]+(?:[.,][0-9]*)?|\\.[0-9]+)[ \t\xa0]*:[ \t\xa0]*[+-]?(?:[0-9]+(?:[.,][0-9]*)?|\\.[0-9]+)',
    'KIND': '(?:tapped[ \t]+coil|coil|capacitor|resistor|lamp|fuse|protector|attenuator|link)(?!\\w)',
    'CODE': '[0-9]+(?:[RKMGLkmunpµμ][0-9]+[BCDGJKM]?|R[0-9]+F|[RLkKMGmunpµμ])(?!\\w)',
    'PAD': '(?!non-polar(?!\\w))[^\\W\\d]\\w*(?:\\.[^\\W\\d]\\w*)?(?:\\+|-(?!-))',
    'FINDING': '[a-z][a-z0-9]*(?:-[a-z0-9]+)*',
    'OFF_BOARD': 'off[ \t\xa0]+board(?!\\w)',
    'CONNECTOR': 'connector(?=[ \t\xa0]+[^\\W\\d]|[ \t\xa0]*\\{)',
    'POSITION': 'position(?=[ \t\xa0]+[^\\W\\d]|[ \t\xa0]*\\{)',
    'CHOICE': 'choice(?=[ \t\xa0]+[^\\W\\d]|[ \t\xa0]*\\{)',
    'LAYOUT': 'layout(?=[ \t\xa0]+[^\\W\\d]|[ \t\xa0]*\\{)',
    'BOARD': 'board(?=[ \t\xa0]+[^\\W\\d]|[ \t\xa0]*\\{)',
    'BENCH': 'bench(?=[ \t\xa0]*\\{)',
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
    'THICKNESS': 'thickness',
    'COUPLING': 'coupling',
    'BECAUSE': 'because',
    'INCLUDE': 'include',
    'LIBRARY': 'library',
    'NETWORK': 'network',
    'OUTLINE': 'outline',
    'THROUGH': 'through',
    'VARIANT': 'variant',
    'COPPER': 'copper',
    'CORNER': 'corner',
    'DESIGN': 'design',
    'DRIVER': 'driver',
    'EXPECT': 'expect',
    'FIXING': 'fixing',
    'JUMPER': 'jumper',
    'RAISED': 'raised',
    'SOLDER': 'solder',
    'UNUSED': 'unused',
    'WITHIN': 'within',
    'ABOVE': 'above',
    'ALLOW': 'allow',
    'BELOW': 'below',
    'DEPTH': 'depth',
    'DRILL': 'drill',
    'GIVEN': 'given',
    'HOLES': 'holes',
    'INPUT': 'input',
    'LEADS': 'leads',
    'LIMIT': 'limit',
    'PARTS': 'parts',
    'PLACE': 'place',
    'POSTS': 'posts',
    'TRACK': 'track',
    'AREA': 'area',
    'AXIS': 'axis',
    'FROM': 'from',
    'HOLE': 'hole',
    'INTO': 'into',
    'LEAD': 'lead',
    'OMIT': 'omit',
    'SEEN': 'seen',
    'SIDE': 'side',
    'TAGS': 'tags',
    'AND': 'and',
    'BUS': 'bus',
    'CUT': 'cut',
    'FIT': 'fit',
    'LEG': 'leg',
    'LET': 'let',
    'OUT': 'out',
    'SET': 'set',
    'TAG': 'tag',
    'TIE': 'tie',
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
    'thickness': 'THICKNESS',
    'coupling': 'COUPLING',
    'because': 'BECAUSE',
    'include': 'INCLUDE',
    'library': 'LIBRARY',
    'network': 'NETWORK',
    'outline': 'OUTLINE',
    'through': 'THROUGH',
    'variant': 'VARIANT',
    'copper': 'COPPER',
    'corner': 'CORNER',
    'design': 'DESIGN',
    'driver': 'DRIVER',
    'expect': 'EXPECT',
    'fixing': 'FIXING',
    'jumper': 'JUMPER',
    'raised': 'RAISED',
    'solder': 'SOLDER',
    'unused': 'UNUSED',
    'within': 'WITHIN',
    'above': 'ABOVE',
    'allow': 'ALLOW',
    'below': 'BELOW',
    'depth': 'DEPTH',
    'drill': 'DRILL',
    'given': 'GIVEN',
    'holes': 'HOLES',
    'input': 'INPUT',
    'leads': 'LEADS',
    'limit': 'LIMIT',
    'parts': 'PARTS',
    'place': 'PLACE',
    'posts': 'POSTS',
    'track': 'TRACK',
    'area': 'AREA',
    'axis': 'AXIS',
    'from': 'FROM',
    'hole': 'HOLE',
    'into': 'INTO',
    'lead': 'LEAD',
    'omit': 'OMIT',
    'seen': 'SEEN',
    'side': 'SIDE',
    'tags': 'TAGS',
    'and': 'AND',
    'bus': 'BUS',
    'cut': 'CUT',
    'fit': 'FIT',
    'leg': 'LEG',
    'let': 'LET',
    'out': 'OUT',
    'set': 'SET',
    'tag': 'TAG',
    'tie': 'TIE',
    'use': 'USE',
    'as': 'AS',
    'at': 'AT',
    'in': 'IN',
    'of': 'OF',
    'on': 'ON',
    'to': 'TO',
}

RULES: tuple[tuple[str, str | None, int, tuple[int, ...], bool], ...] = (
    ('__area_plus_12', None, 2, (1,), False),  # __area_plus_12: TO point
    ('__area_plus_12', None, 3, (0, 2), False),  # __area_plus_12: __area_plus_12 TO point
    ('__block_star_17', None, 2, (0, 1), False),  # __block_star_17: item _sep
    ('__block_star_17', None, 3, (0, 1, 2), False),  # __block_star_17: __block_star_17 item _sep
    ('__board_star_11', None, 2, (0, 1), False),  # __board_star_11: _board_line _line_end
    ('__board_star_11', None, 3, (0, 1, 2), False),  # __board_star_11: __board_star_11 _board_line _line_end
    ('__body_star_16', None, 2, (0, 1), False),  # __body_star_16: entry _sep
    ('__body_star_16', None, 3, (0, 1, 2), False),  # __body_star_16: __body_star_16 entry _sep
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
    ('__layout_star_13', None, 2, (0, 1), False),  # __layout_star_13: _layout_line _line_end
    ('__layout_star_13', None, 3, (0, 1, 2), False),  # __layout_star_13: __layout_star_13 _layout_line _line_end
    ('__leads_star_15', None, 2, (1,), False),  # __leads_star_15: AND spot
    ('__leads_star_15', None, 3, (0, 2), False),  # __leads_star_15: __leads_star_15 AND spot
    ('__leg_star_2', None, 2, (1,), False),  # __leg_star_2: AND NAME
    ('__leg_star_2', None, 3, (0, 2), False),  # __leg_star_2: __leg_star_2 AND NAME
    ('__network_star_5', None, 2, (1,), False),  # __network_star_5: COMMA NAME
    ('__network_star_5', None, 3, (0, 2), False),  # __network_star_5: __network_star_5 COMMA NAME
    ('__omit_star_7', None, 2, (1,), False),  # __omit_star_7: AND path
    ('__omit_star_7', None, 3, (0, 2), False),  # __omit_star_7: __omit_star_7 AND path
    ('__path_star_18', None, 2, (1,), False),  # __path_star_18: DOT NAME
    ('__path_star_18', None, 3, (0, 2), False),  # __path_star_18: __path_star_18 DOT NAME
    ('__pins_star_1', None, 2, (0, 1), False),  # __pins_star_1: pin _pin_sep
    ('__pins_star_1', None, 3, (0, 1, 2), False),  # __pins_star_1: __pins_star_1 pin _pin_sep
    ('__placing_star_14', None, 2, (0, 1), False),  # __placing_star_14: _how _how_end
    ('__placing_star_14', None, 3, (0, 1, 2), False),  # __placing_star_14: __placing_star_14 _how _how_end
    ('__start_star_0', None, 2, (0,), False),  # __start_star_0: entry _NL
    ('__start_star_0', None, 3, (0, 1), False),  # __start_star_0: __start_star_0 entry _NL
    ('__together_star_10', None, 2, (1,), False),  # __together_star_10: PLUS path
    ('__together_star_10', None, 3, (0, 2), False),  # __together_star_10: __together_star_10 PLUS path
    ('__walk_star_3', None, 2, (0, 1), False),  # __walk_star_3: ARROW station
    ('__walk_star_3', None, 3, (0, 1, 2), False),  # __walk_star_3: __walk_star_3 ARROW station
    ('_board_line', None, 1, (0,), False),  # _board_line: outline
    ('_board_line', None, 1, (0,), False),  # _board_line: thickness
    ('_board_line', None, 1, (0,), False),  # _board_line: copper
    ('_board_line', None, 1, (0,), False),  # _board_line: seen
    ('_board_line', None, 1, (0,), False),  # _board_line: corner
    ('_board_line', None, 1, (0,), False),  # _board_line: area
    ('_board_line', None, 1, (0,), False),  # _board_line: track
    ('_board_line', None, 1, (0,), False),  # _board_line: holes
    ('_board_line', None, 1, (0,), False),  # _board_line: hole
    ('_board_line', None, 1, (0,), False),  # _board_line: tags
    ('_board_line', None, 1, (0,), False),  # _board_line: tag
    ('_board_line', None, 1, (0,), False),  # _board_line: fixing
    ('_how', None, 1, (0,), False),  # _how: axis
    ('_how', None, 1, (0,), False),  # _how: lead
    ('_how', None, 1, (0,), False),  # _how: leads
    ('_how', None, 1, (0,), False),  # _how: tie
    ('_how', None, 1, (0,), False),  # _how: raised
    ('_how', None, 1, (0,), False),  # _how: note
    ('_how_end', None, 2, (), False),  # _how_end: COMMA _NL
    ('_how_end', None, 1, (), False),  # _how_end: COMMA
    ('_how_end', None, 1, (), False),  # _how_end: _NL
    ('_layout_line', None, 1, (0,), False),  # _layout_line: cut
    ('_layout_line', None, 1, (0,), False),  # _layout_line: drill
    ('_layout_line', None, 1, (0,), False),  # _layout_line: jumper
    ('_layout_line', None, 1, (0,), False),  # _layout_line: bus
    ('_layout_line', None, 1, (0,), False),  # _layout_line: place
    ('_layout_line', None, 1, (0,), False),  # _layout_line: lead_out
    ('_layout_line', None, 1, (0,), False),  # _layout_line: depth
    ('_line_end', None, 2, (), False),  # _line_end: COMMA _NL
    ('_line_end', None, 1, (), False),  # _line_end: COMMA
    ('_line_end', None, 1, (), False),  # _line_end: _NL
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
    ('area', 'area', 5, (1, 2, 3, 4), False),  # area: AREA NAME FROM point __area_plus_12
    ('atom', 'number', 2, (0, 1), False),  # atom: NUMBER NAME
    ('atom', 'number', 2, (0, 1), False),  # atom: NUMBER PERCENT
    ('atom', 'number', 1, (0,), False),  # atom: NUMBER
    ('atom', 'number', 2, (0, 1), False),  # atom: COMMA_NUMBER NAME
    ('atom', 'number', 2, (0, 1), False),  # atom: COMMA_NUMBER PERCENT
    ('atom', 'number', 1, (0,), False),  # atom: COMMA_NUMBER
    ('atom', 'code', 1, (0,), False),  # atom: CODE
    ('atom', 'name', 1, (0,), False),  # atom: NAME
    ('atom', 'group_expr', 3, (1,), False),  # atom: LPAR expr RPAR
    ('axis', 'axis', 2, (1,), False),  # axis: AXIS expr
    ('bench', 'bench', 2, (0, 1), False),  # bench: BENCH block
    ('block', 'block', 5, (2, 3), False),  # block: LBRACE _NL __block_star_17 item RBRACE
    ('block', 'block', 4, (2,), False),  # block: LBRACE _NL __block_star_17 RBRACE
    ('block', 'block', 4, (2,), False),  # block: LBRACE _NL item RBRACE
    ('block', 'block', 3, (), False),  # block: LBRACE _NL RBRACE
    ('block', 'block', 4, (1, 2), False),  # block: LBRACE __block_star_17 item RBRACE
    ('block', 'block', 3, (1,), False),  # block: LBRACE __block_star_17 RBRACE
    ('block', 'block', 3, (1,), False),  # block: LBRACE item RBRACE
    ('block', 'block', 2, (), False),  # block: LBRACE RBRACE
    ('board', 'board', 8, (0, 1, 2, 5, 6), False),  # board: BOARD NAME STRING LBRACE _NL __board_star_11 _board_line RBRACE
    ('board', 'board', 7, (0, 1, 2, 5), False),  # board: BOARD NAME STRING LBRACE _NL __board_star_11 RBRACE
    ('board', 'board', 7, (0, 1, 2, 5), False),  # board: BOARD NAME STRING LBRACE _NL _board_line RBRACE
    ('board', 'board', 6, (0, 1, 2), False),  # board: BOARD NAME STRING LBRACE _NL RBRACE
    ('board', 'board', 7, (0, 1, 2, 4, 5), False),  # board: BOARD NAME STRING LBRACE __board_star_11 _board_line RBRACE
    ('board', 'board', 6, (0, 1, 2, 4), False),  # board: BOARD NAME STRING LBRACE __board_star_11 RBRACE
    ('board', 'board', 6, (0, 1, 2, 4), False),  # board: BOARD NAME STRING LBRACE _board_line RBRACE
    ('board', 'board', 5, (0, 1, 2), False),  # board: BOARD NAME STRING LBRACE RBRACE
    ('board', 'board', 7, (0, 1, 4, 5), False),  # board: BOARD NAME LBRACE _NL __board_star_11 _board_line RBRACE
    ('board', 'board', 6, (0, 1, 4), False),  # board: BOARD NAME LBRACE _NL __board_star_11 RBRACE
    ('board', 'board', 6, (0, 1, 4), False),  # board: BOARD NAME LBRACE _NL _board_line RBRACE
    ('board', 'board', 5, (0, 1), False),  # board: BOARD NAME LBRACE _NL RBRACE
    ('board', 'board', 6, (0, 1, 3, 4), False),  # board: BOARD NAME LBRACE __board_star_11 _board_line RBRACE
    ('board', 'board', 5, (0, 1, 3), False),  # board: BOARD NAME LBRACE __board_star_11 RBRACE
    ('board', 'board', 5, (0, 1, 3), False),  # board: BOARD NAME LBRACE _board_line RBRACE
    ('board', 'board', 4, (0, 1), False),  # board: BOARD NAME LBRACE RBRACE
    ('body', 'body', 5, (2, 3), False),  # body: LBRACE _NL __body_star_16 entry RBRACE
    ('body', 'body', 4, (2,), False),  # body: LBRACE _NL __body_star_16 RBRACE
    ('body', 'body', 4, (2,), False),  # body: LBRACE _NL entry RBRACE
    ('body', 'body', 3, (), False),  # body: LBRACE _NL RBRACE
    ('body', 'body', 4, (1, 2), False),  # body: LBRACE __body_star_16 entry RBRACE
    ('body', 'body', 3, (1,), False),  # body: LBRACE __body_star_16 RBRACE
    ('body', 'body', 3, (1,), False),  # body: LBRACE entry RBRACE
    ('body', 'body', 2, (), False),  # body: LBRACE RBRACE
    ('bus', 'bus', 5, (1, 3, 4), False),  # bus: BUS spot TO spot block
    ('bus', 'bus', 4, (1, 3), False),  # bus: BUS spot TO spot
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
    ('copper', 'copper', 4, (1, 3), False),  # copper: COPPER expr ON side
    ('copper', 'copper', 3, (2,), False),  # copper: COPPER ON side
    ('corner', 'corner', 4, (1, 3), False),  # corner: CORNER point CUT expr
    ('coupling', 'coupling', 5, (1, 3, 4), False),  # coupling: COUPLING path AND path expr
    ('cut', 'cut', 6, (1, 2, 4, 5), False),  # cut: CUT FROM point TO point block
    ('cut', 'cut', 5, (1, 2, 4), False),  # cut: CUT FROM point TO point
    ('depth', 'depth', 2, (1,), False),  # depth: DEPTH expr
    ('design', 'design', 2, (1,), False),  # design: DESIGN STRING
    ('drill', 'drill', 7, (1, 2, 4, 5, 6), False),  # drill: DRILL NAME expr AT point in_area block
    ('drill', 'drill', 6, (1, 2, 4, 5), False),  # drill: DRILL NAME expr AT point in_area
    ('drill', 'drill', 6, (1, 2, 4, 5), False),  # drill: DRILL NAME expr AT point block
    ('drill', 'drill', 5, (1, 2, 4), False),  # drill: DRILL NAME expr AT point
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
    ('entry', 'entry', 1, (0,), True),  # entry: board
    ('entry', 'entry', 1, (0,), True),  # entry: layout
    ('entry', 'entry', 1, (0,), True),  # entry: bench
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
    ('fixing', 'fixing', 5, (1, 3, 4), False),  # fixing: FIXING expr AT point block
    ('fixing', 'fixing', 4, (1, 3), False),  # fixing: FIXING expr AT point
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
    ('hole', 'hole', 7, (1, 3, 5, 6), False),  # hole: HOLE NAME OF expr AT point block
    ('hole', 'hole', 6, (1, 3, 5), False),  # hole: HOLE NAME OF expr AT point
    ('holes', 'holes', 10, (1, 2, 4, 5, 6, 8, 9), False),  # holes: HOLES NAME NUMBER OF expr FROM point TO point block
    ('holes', 'holes', 9, (1, 2, 4, 5, 6, 8), False),  # holes: HOLES NAME NUMBER OF expr FROM point TO point
    ('in_area', 'in_area', 2, (1,), False),  # in_area: IN NAME
    ('in_variants', 'in_variants', 3, (1, 2), False),  # in_variants: IN together __in_variants_star_9
    ('in_variants', 'in_variants', 2, (1,), False),  # in_variants: IN together
    ('include', 'include', 4, (1, 2), False),  # include: INCLUDE STRING FROM LIBRARY
    ('include', 'include', 2, (1,), False),  # include: INCLUDE STRING
    ('input', 'input', 2, (1,), False),  # input: INPUT NAME
    ('is', 'is', 1, (0,), False),  # is: expr
    ('item', 'bare', 1, (0,), False),  # item: expr
    ('item', 'keyed', 2, (0, 1), False),  # item: NAME expr
    ('item', 'texted', 2, (0, 1), False),  # item: NAME STRING
    ('jumper', 'jumper', 5, (1, 2, 3, 4), False),  # jumper: JUMPER spot ARROW spot block
    ('jumper', 'jumper', 4, (1, 2, 3), False),  # jumper: JUMPER spot ARROW spot
    ('layout', 'layout', 10, (0, 2, 4, 7, 8), False),  # layout: LAYOUT ON NAME AS NAME LBRACE _NL __layout_star_13 _layout_line RBRACE
    ('layout', 'layout', 9, (0, 2, 4, 7), False),  # layout: LAYOUT ON NAME AS NAME LBRACE _NL __layout_star_13 RBRACE
    ('layout', 'layout', 9, (0, 2, 4, 7), False),  # layout: LAYOUT ON NAME AS NAME LBRACE _NL _layout_line RBRACE
    ('layout', 'layout', 8, (0, 2, 4), False),  # layout: LAYOUT ON NAME AS NAME LBRACE _NL RBRACE
    ('layout', 'layout', 9, (0, 2, 4, 6, 7), False),  # layout: LAYOUT ON NAME AS NAME LBRACE __layout_star_13 _layout_line RBRACE
    ('layout', 'layout', 8, (0, 2, 4, 6), False),  # layout: LAYOUT ON NAME AS NAME LBRACE __layout_star_13 RBRACE
    ('layout', 'layout', 8, (0, 2, 4, 6), False),  # layout: LAYOUT ON NAME AS NAME LBRACE _layout_line RBRACE
    ('layout', 'layout', 7, (0, 2, 4), False),  # layout: LAYOUT ON NAME AS NAME LBRACE RBRACE
    ('layout', 'layout', 8, (0, 2, 5, 6), False),  # layout: LAYOUT ON NAME LBRACE _NL __layout_star_13 _layout_line RBRACE
    ('layout', 'layout', 7, (0, 2, 5), False),  # layout: LAYOUT ON NAME LBRACE _NL __layout_star_13 RBRACE
    ('layout', 'layout', 7, (0, 2, 5), False),  # layout: LAYOUT ON NAME LBRACE _NL _layout_line RBRACE
    ('layout', 'layout', 6, (0, 2), False),  # layout: LAYOUT ON NAME LBRACE _NL RBRACE
    ('layout', 'layout', 7, (0, 2, 4, 5), False),  # layout: LAYOUT ON NAME LBRACE __layout_star_13 _layout_line RBRACE
    ('layout', 'layout', 6, (0, 2, 4), False),  # layout: LAYOUT ON NAME LBRACE __layout_star_13 RBRACE
    ('layout', 'layout', 6, (0, 2, 4), False),  # layout: LAYOUT ON NAME LBRACE _layout_line RBRACE
    ('layout', 'layout', 5, (0, 2), False),  # layout: LAYOUT ON NAME LBRACE RBRACE
    ('lead', 'lead', 3, (0, 2), False),  # lead: NAME INTO spot
    ('lead_out', 'lead_out', 6, (2, 4, 5), False),  # lead_out: LEAD OUT spot TO spot block
    ('lead_out', 'lead_out', 5, (2, 4), False),  # lead_out: LEAD OUT spot TO spot
    ('leads', 'leads', 4, (2, 3), False),  # leads: LEADS INTO spot __leads_star_15
    ('leads', 'leads', 3, (2,), False),  # leads: LEADS INTO spot
    ('leg', 'leg', 4, (1, 2, 3), False),  # leg: LEG NAME __leg_star_2 body
    ('leg', 'leg', 3, (1, 2), False),  # leg: LEG NAME body
    ('let', 'let', 4, (1, 3), False),  # let: LET NAME EQUAL expr
    ('limit', 'limit', 3, (1, 2), False),  # limit: LIMIT FINDING expr
    ('network', 'network', 8, (1, 3, 4, 6, 7), False),  # network: NETWORK NAME LPAR NAME __network_star_5 RPAR given body
    ('network', 'network', 7, (1, 3, 4, 6), False),  # network: NETWORK NAME LPAR NAME __network_star_5 RPAR body
    ('network', 'network', 7, (1, 3, 5, 6), False),  # network: NETWORK NAME LPAR NAME RPAR given body
    ('network', 'network', 6, (1, 3, 5), False),  # network: NETWORK NAME LPAR NAME RPAR body
    ('note', 'note', 2, (0, 1), False),  # note: NAME STRING
    ('omit', 'omit', 3, (1, 2), False),  # omit: OMIT path __omit_star_7
    ('omit', 'omit', 2, (1,), False),  # omit: OMIT path
    ('outline', 'outline', 2, (1,), False),  # outline: OUTLINE point
    ('param', 'param', 3, (0, 2), False),  # param: NAME EQUAL expr
    ('param', 'param', 1, (0,), False),  # param: NAME
    ('part', 'part', 4, (0, 1, 2, 3), False),  # part: KIND NAME expr block
    ('part', 'part', 3, (0, 1, 2), False),  # part: KIND NAME expr
    ('part', 'part', 3, (0, 1, 2), False),  # part: KIND NAME block
    ('part', 'part', 2, (0, 1), False),  # part: KIND NAME
    ('path', 'path', 2, (0, 1), False),  # path: NAME __path_star_18
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
    ('place', 'place', 6, (1, 2, 4, 5), False),  # place: PLACE path OFF_BOARD ON side placing
    ('place', 'place', 5, (1, 2, 4), False),  # place: PLACE path OFF_BOARD ON side
    ('place', 'place', 4, (1, 2, 3), False),  # place: PLACE path OFF_BOARD placing
    ('place', 'place', 3, (1, 2), False),  # place: PLACE path OFF_BOARD
    ('place', 'place', 7, (1, 3, 5, 6), False),  # place: PLACE path AT point ON side placing
    ('place', 'place', 6, (1, 3, 5), False),  # place: PLACE path AT point ON side
    ('place', 'place', 5, (1, 3, 4), False),  # place: PLACE path AT point placing
    ('place', 'place', 4, (1, 3), False),  # place: PLACE path AT point
    ('placing', 'placing', 5, (2, 3), False),  # placing: LBRACE _NL __placing_star_14 _how RBRACE
    ('placing', 'placing', 4, (2,), False),  # placing: LBRACE _NL __placing_star_14 RBRACE
    ('placing', 'placing', 4, (2,), False),  # placing: LBRACE _NL _how RBRACE
    ('placing', 'placing', 3, (), False),  # placing: LBRACE _NL RBRACE
    ('placing', 'placing', 4, (1, 2), False),  # placing: LBRACE __placing_star_14 _how RBRACE
    ('placing', 'placing', 3, (1,), False),  # placing: LBRACE __placing_star_14 RBRACE
    ('placing', 'placing', 3, (1,), False),  # placing: LBRACE _how RBRACE
    ('placing', 'placing', 2, (), False),  # placing: LBRACE RBRACE
    ('point', 'point', 2, (0, 1), False),  # point: POINT NAME
    ('position', 'position', 4, (0, 1, 2, 3), False),  # position: POSITION NAME STRING body
    ('position', 'position', 3, (0, 1, 2), False),  # position: POSITION NAME body
    ('posts', 'posts', 2, (1,), False),  # posts: POSTS NAME
    ('power', 'power', 1, (0,), True),  # power: unary
    ('power', 'raise_to', 3, (0, 2), False),  # power: unary CIRCUMFLEX power
    ('product', 'product', 1, (0,), True),  # product: power
    ('product', 'multiply', 3, (0, 2), False),  # product: product STAR power
    ('product', 'divide', 3, (0, 2), False),  # product: product SLASH power
    ('raised', 'raised', 2, (1,), False),  # raised: RAISED expr
    ('seen', 'seen', 3, (1, 2), False),  # seen: SEEN FROM side
    ('set', 'set', 4, (1, 3), False),  # set: SET path EQUAL expr
    ('side', 'side', 2, (0,), False),  # side: PARTS SIDE
    ('side', 'side', 2, (0,), False),  # side: SOLDER SIDE
    ('spot', 'pad_spot', 1, (0,), False),  # spot: PAD
    ('spot', 'spot', 2, (0, 1), False),  # spot: path NUMBER
    ('spot', 'spot', 1, (0,), False),  # spot: path
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
    ('tag', 'tag', 5, (1, 3, 4), False),  # tag: TAG NAME AT point block
    ('tag', 'tag', 4, (1, 3), False),  # tag: TAG NAME AT point
    ('tags', 'tags', 8, (1, 2, 3, 4, 6, 7), False),  # tags: TAGS NAME NUMBER FROM point TO point block
    ('tags', 'tags', 7, (1, 2, 3, 4, 6), False),  # tags: TAGS NAME NUMBER FROM point TO point
    ('testpoint', 'testpoint', 2, (1,), False),  # testpoint: TESTPOINT NAME
    ('thickness', 'thickness', 2, (1,), False),  # thickness: THICKNESS expr
    ('tie', 'tie', 6, (1, 2, 3, 5), False),  # tie: TIE expr FROM point TO point
    ('together', 'together', 2, (0, 1), False),  # together: path __together_star_10
    ('together', 'together', 1, (0,), False),  # together: path
    ('track', 'track', 6, (1, 2, 3, 4, 5), False),  # track: TRACK expr FROM point __area_plus_12 block
    ('track', 'track', 5, (1, 2, 3, 4), False),  # track: TRACK expr FROM point __area_plus_12
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
    {'$END': -322, 'ALLOW': 1, 'AMPLIFIER': 2, 'BENCH': 3, 'BOARD': 4, 'CHOICE': 5, 'CONNECTOR': 6, 'COUPLING': 7, 'DESIGN': 8, 'DRIVER': 9, 'EXPECT': 10, 'FIT': 11, 'INCLUDE': 12, 'INPUT': 13, 'KIND': 14, 'LAYOUT': 15, 'LEG': 16, 'LET': 17, 'LIMIT': 18, 'LPAR': 19, 'NAME': 20, 'NETWORK': 21, 'OMIT': 22, 'PAD': 23, 'POSITION': 24, 'POSTS': 25, 'SET': 26, 'TESTPOINT': 27, 'USE': 28, 'VARIANT': 29, '_NL': 30, '__start_star_0': 31, 'allow': 32, 'amplifier': 33, 'bench': 34, 'board': 35, 'choice': 36, 'connector': 37, 'coupling': 38, 'design': 39, 'driver': 40, 'entry': 41, 'expect': 42, 'fit': 43, 'group': 44, 'include': 45, 'input': 46, 'layout': 47, 'leg': 48, 'let': 49, 'limit': 50, 'network': 51, 'omit': 52, 'part': 53, 'path': 54, 'position': 55, 'posts': 56, 'set': 57, 'start': 58, 'station': 59, 'testpoint': 60, 'use': 61, 'variant': 62, 'walk': 63},
    {'FINDING': 64},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'atom': 71, 'expr': 72, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'LBRACE': 77, 'block': 78},
    {'NAME': 79},
    {'NAME': 80},
    {'NAME': 81},
    {'NAME': 20, 'path': 82},
    {'STRING': 83},
    {'NAME': 84},
    {'NAME': 85},
    {'NAME': 20, 'path': 86},
    {'STRING': 87},
    {'NAME': 88},
    {'NAME': 89},
    {'ON': 90},
    {'NAME': 91},
    {'NAME': 92},
    {'FINDING': 93},
    {'LPAR': 19, 'NAME': 20, 'PAD': 23, '_NL': 94, 'chain': 95, 'group': 44, 'path': 54, 'station': 96},
    {'ABOVE': -273, 'AND': -273, 'ARROW': -273, 'AT': -273, 'BECAUSE': -273, 'BELOW': -273, 'CODE': -273, 'COMMA': -273, 'COMMA_NUMBER': -273, 'DOT': 97, 'EQUAL': -273, 'FROM': -273, 'IN': -273, 'LBRACE': -273, 'LPAR': -273, 'MINUS': -273, 'NAME': -273, 'NUMBER': -273, 'OFF_BOARD': -273, 'PLUS': -273, 'RBRACE': -273, 'RPAR': -273, 'TO': -273, 'VBAR': -273, 'WITHIN': -273, '_NL': -273, '__path_star_18': 98},
    {'NAME': 99},
    {'NAME': 20, 'path': 100},
    {'ARROW': -323, 'COMMA': -323, 'RBRACE': -323, 'RPAR': -323, 'VBAR': -323, '_NL': -323},
    {'NAME': 101},
    {'NAME': 102},
    {'NAME': 20, 'path': 103},
    {'NAME': 104},
    {'NAME': 105},
    {'NAME': 106},
    {'$END': -320, 'ALLOW': 1, 'AMPLIFIER': 2, 'BENCH': 3, 'BOARD': 4, 'CHOICE': 5, 'CONNECTOR': 6, 'COUPLING': 7, 'DESIGN': 8, 'DRIVER': 9, 'EXPECT': 10, 'FIT': 11, 'INCLUDE': 12, 'INPUT': 13, 'KIND': 14, 'LAYOUT': 15, 'LEG': 16, 'LET': 17, 'LIMIT': 18, 'LPAR': 19, 'NAME': 20, 'NETWORK': 21, 'OMIT': 22, 'PAD': 23, 'POSITION': 24, 'POSTS': 25, 'SET': 26, 'TESTPOINT': 27, 'USE': 28, 'VARIANT': 29, '__start_star_0': 107, 'allow': 32, 'amplifier': 33, 'bench': 34, 'board': 35, 'choice': 36, 'connector': 37, 'coupling': 38, 'design': 39, 'driver': 40, 'entry': 41, 'expect': 42, 'fit': 43, 'group': 44, 'include': 45, 'input': 46, 'layout': 47, 'leg': 48, 'let': 49, 'limit': 50, 'network': 51, 'omit': 52, 'part': 53, 'path': 54, 'position': 55, 'posts': 56, 'set': 57, 'station': 59, 'testpoint': 60, 'use': 61, 'variant': 62, 'walk': 63},
    {'$END': -321, 'ALLOW': 1, 'AMPLIFIER': 2, 'BENCH': 3, 'BOARD': 4, 'CHOICE': 5, 'CONNECTOR': 6, 'COUPLING': 7, 'DESIGN': 8, 'DRIVER': 9, 'EXPECT': 10, 'FIT': 11, 'INCLUDE': 12, 'INPUT': 13, 'KIND': 14, 'LAYOUT': 15, 'LEG': 16, 'LET': 17, 'LIMIT': 18, 'LPAR': 19, 'NAME': 20, 'NETWORK': 21, 'OMIT': 22, 'PAD': 23, 'POSITION': 24, 'POSTS': 25, 'SET': 26, 'TESTPOINT': 27, 'USE': 28, 'VARIANT': 29, 'allow': 32, 'amplifier': 33, 'bench': 34, 'board': 35, 'choice': 36, 'connector': 37, 'coupling': 38, 'design': 39, 'driver': 40, 'entry': 108, 'expect': 42, 'fit': 43, 'group': 44, 'include': 45, 'input': 46, 'layout': 47, 'leg': 48, 'let': 49, 'limit': 50, 'network': 51, 'omit': 52, 'part': 53, 'path': 54, 'position': 55, 'posts': 56, 'set': 57, 'station': 59, 'testpoint': 60, 'use': 61, 'variant': 62, 'walk': 63},
    {'COMMA': -185, 'RBRACE': -185, '_NL': -185},
    {'COMMA': -164, 'RBRACE': -164, '_NL': -164},
    {'COMMA': -189, 'RBRACE': -189, '_NL': -189},
    {'COMMA': -187, 'RBRACE': -187, '_NL': -187},
    {'COMMA': -181, 'RBRACE': -181, '_NL': -181},
    {'COMMA': -167, 'RBRACE': -167, '_NL': -167},
    {'COMMA': -170, 'RBRACE': -170, '_NL': -170},
    {'COMMA': -163, 'RBRACE': -163, '_NL': -163},
    {'COMMA': -168, 'RBRACE': -168, '_NL': -168},
    {'_NL': 109},
    {'COMMA': -184, 'RBRACE': -184, '_NL': -184},
    {'COMMA': -178, 'RBRACE': -178, '_NL': -178},
    {'ARROW': -325, 'COMMA': -325, 'RBRACE': -325, 'RPAR': -325, 'VBAR': -325, '_NL': -325},
    {'COMMA': -183, 'RBRACE': -183, '_NL': -183},
    {'COMMA': -165, 'RBRACE': -165, '_NL': -165},
    {'COMMA': -188, 'RBRACE': -188, '_NL': -188},
    {'COMMA': -174, 'RBRACE': -174, '_NL': -174},
    {'COMMA': -171, 'RBRACE': -171, '_NL': -171},
    {'COMMA': -186, 'RBRACE': -186, '_NL': -186},
    {'COMMA': -172, 'RBRACE': -172, '_NL': -172},
    {'COMMA': -177, 'RBRACE': -177, '_NL': -177},
    {'COMMA': -169, 'RBRACE': -169, '_NL': -169},
    {'ARROW': -324, 'COMMA': -324, 'RBRACE': -324, 'RPAR': -324, 'VBAR': -324, '_NL': -324},
    {'COMMA': -182, 'RBRACE': -182, '_NL': -182},
    {'COMMA': -166, 'RBRACE': -166, '_NL': -166},
    {'COMMA': -179, 'RBRACE': -179, '_NL': -179},
    {},
    {'ARROW': 110, 'COMMA': -347, 'RBRACE': -347, '_NL': -347, '__walk_star_3': 111},
    {'COMMA': -176, 'RBRACE': -176, '_NL': -176},
    {'COMMA': -173, 'RBRACE': -173, '_NL': -173},
    {'COMMA': -180, 'RBRACE': -180, '_NL': -180},
    {'COMMA': -175, 'RBRACE': -175, '_NL': -175},
    {'BECAUSE': 112, 'IN': 113, 'ON': 114, 'in_variants': 115},
    {'ABOVE': -95, 'AT': -95, 'BELOW': -95, 'CIRCUMFLEX': -95, 'COMMA': -95, 'FROM': -95, 'INTO': -95, 'LBRACE': -95, 'MINUS': -95, 'ON': -95, 'PLUS': -95, 'RBRACE': -95, 'RPAR': -95, 'SLASH': -95, 'STAR': -95, 'TO': -95, 'WITHIN': -95, '_NL': -95},
    {'ABOVE': -94, 'AT': -94, 'BELOW': -94, 'CIRCUMFLEX': -94, 'COMMA': -94, 'FROM': -94, 'INTO': -94, 'LBRACE': -94, 'MINUS': -94, 'NAME': 116, 'ON': -94, 'PERCENT': 117, 'PLUS': -94, 'RBRACE': -94, 'RPAR': -94, 'SLASH': -94, 'STAR': -94, 'TO': -94, 'WITHIN': -94, '_NL': -94},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'atom': 71, 'expr': 118, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'atom': 71, 'unary': 119},
    {'ABOVE': -96, 'AT': -96, 'BELOW': -96, 'CIRCUMFLEX': -96, 'COMMA': -96, 'FROM': -96, 'INTO': -96, 'LBRACE': -96, 'MINUS': -96, 'ON': -96, 'PLUS': -96, 'RBRACE': -96, 'RPAR': -96, 'SLASH': -96, 'STAR': -96, 'TO': -96, 'WITHIN': -96, '_NL': -96},
    {'ABOVE': -91, 'AT': -91, 'BELOW': -91, 'CIRCUMFLEX': -91, 'COMMA': -91, 'FROM': -91, 'INTO': -91, 'LBRACE': -91, 'MINUS': -91, 'NAME': 120, 'ON': -91, 'PERCENT': 121, 'PLUS': -91, 'RBRACE': -91, 'RPAR': -91, 'SLASH': -91, 'STAR': -91, 'TO': -91, 'WITHIN': -91, '_NL': -91},
    {'ABOVE': -340, 'AT': -340, 'BELOW': -340, 'CIRCUMFLEX': -340, 'COMMA': -340, 'FROM': -340, 'INTO': -340, 'LBRACE': -340, 'MINUS': -340, 'ON': -340, 'PLUS': -340, 'RBRACE': -340, 'RPAR': -340, 'SLASH': -340, 'STAR': -340, 'TO': -340, 'WITHIN': -340, '_NL': -340},
    {'INTO': 122},
    {'ABOVE': -308, 'AT': -308, 'BELOW': -308, 'COMMA': -308, 'FROM': -308, 'INTO': -308, 'LBRACE': -308, 'MINUS': -308, 'ON': -308, 'PLUS': -308, 'RBRACE': -308, 'RPAR': -308, 'SLASH': -308, 'STAR': -308, 'TO': -308, 'WITHIN': -308, '_NL': -308},
    {'ABOVE': -326, 'AT': -326, 'BELOW': -326, 'COMMA': -326, 'FROM': -326, 'INTO': -326, 'LBRACE': -326, 'MINUS': -326, 'ON': -326, 'PLUS': -326, 'RBRACE': -326, 'RPAR': -326, 'SLASH': 123, 'STAR': 124, 'TO': -326, 'WITHIN': -326, '_NL': -326},
    {'ABOVE': -202, 'AT': -202, 'BELOW': -202, 'COMMA': -202, 'FROM': -202, 'INTO': -202, 'LBRACE': -202, 'MINUS': 125, 'ON': -202, 'PLUS': 126, 'RBRACE': -202, 'RPAR': -202, 'TO': -202, 'WITHIN': -202, '_NL': -202},
    {'ABOVE': -306, 'AT': -306, 'BELOW': -306, 'CIRCUMFLEX': 127, 'COMMA': -306, 'FROM': -306, 'INTO': -306, 'LBRACE': -306, 'MINUS': -306, 'ON': -306, 'PLUS': -306, 'RBRACE': -306, 'RPAR': -306, 'SLASH': -306, 'STAR': -306, 'TO': -306, 'WITHIN': -306, '_NL': -306},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 128, 'NUMBER': 70, 'RBRACE': 129, '_NL': 130, '__block_star_17': 131, 'atom': 71, 'expr': 132, 'item': 133, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'COMMA': -99, 'RBRACE': -99, '_NL': -99},
    {'LBRACE': 134, 'STRING': 135},
    {'LBRACE': 136, 'STRING': 137, 'body': 138},
    {'LBRACE': 139, 'STRING': 140, 'THROUGH': 141, 'pins': 142},
    {'AND': 143},
    {'COMMA': -154, 'RBRACE': -154, '_NL': -154},
    {'CODE': 65, 'COMMA': -162, 'COMMA_NUMBER': 66, 'LBRACE': 77, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'RBRACE': -162, '_NL': -162, 'atom': 71, 'block': 144, 'expr': 145, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'ABOVE': 146, 'AT': 147, 'BELOW': 148, 'CODE': 65, 'COMMA': -201, 'COMMA_NUMBER': 66, 'FROM': 149, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'OF': 150, 'RBRACE': -201, 'WITHIN': 151, '_NL': -201, '__expect_star_8': 152, 'atom': 71, 'clause': 153, 'expr': 154, 'is': 155, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'AND': 156, 'COMMA': -204, 'RBRACE': -204, '_NL': -204, '__omit_star_7': 157},
    {'COMMA': -225, 'FROM': 158, 'RBRACE': -225, '_NL': -225},
    {'COMMA': -226, 'RBRACE': -226, '_NL': -226},
    {'CODE': 65, 'COMMA': -271, 'COMMA_NUMBER': 66, 'LBRACE': 77, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'RBRACE': -271, '_NL': -271, 'atom': 71, 'block': 159, 'expr': 160, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'NAME': 161},
    {'AND': 162, 'LBRACE': 136, '__leg_star_2': 163, 'body': 164},
    {'EQUAL': 165},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'atom': 71, 'expr': 166, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'LPAR': 19, 'NAME': 20, 'PAD': 23, 'chain': 167, 'group': 44, 'path': 54, 'station': 96},
    {'RPAR': 168, 'VBAR': 169, '_NL': 170, '__group_star_4': 171},
    {'ARROW': 110, 'RPAR': -135, 'VBAR': -135, '_NL': -135, '__walk_star_3': 172},
    {'NAME': 173},
    {'ABOVE': -272, 'AND': -272, 'ARROW': -272, 'AT': -272, 'BECAUSE': -272, 'BELOW': -272, 'CODE': -272, 'COMMA': -272, 'COMMA_NUMBER': -272, 'DOT': 174, 'EQUAL': -272, 'FROM': -272, 'IN': -272, 'LBRACE': -272, 'LPAR': -272, 'MINUS': -272, 'NAME': -272, 'NUMBER': -272, 'OFF_BOARD': -272, 'PLUS': -272, 'RBRACE': -272, 'RPAR': -272, 'TO': -272, 'VBAR': -272, 'WITHIN': -272, '_NL': -272},
    {'LPAR': 175},
    {'AND': 156, 'COMMA': -264, 'RBRACE': -264, '_NL': -264, '__omit_star_7': 176},
    {'LBRACE': 136, 'STRING': 177, 'body': 178},
    {'COMMA': -305, 'RBRACE': -305, '_NL': -305},
    {'EQUAL': 179},
    {'COMMA': -333, 'RBRACE': -333, '_NL': -333},
    {'AS': 180},
    {'LBRACE': 136, 'STRING': 181, 'body': 182},
    {'$END': -319, 'ALLOW': 1, 'AMPLIFIER': 2, 'BENCH': 3, 'BOARD': 4, 'CHOICE': 5, 'CONNECTOR': 6, 'COUPLING': 7, 'DESIGN': 8, 'DRIVER': 9, 'EXPECT': 10, 'FIT': 11, 'INCLUDE': 12, 'INPUT': 13, 'KIND': 14, 'LAYOUT': 15, 'LEG': 16, 'LET': 17, 'LIMIT': 18, 'LPAR': 19, 'NAME': 20, 'NETWORK': 21, 'OMIT': 22, 'PAD': 23, 'POSITION': 24, 'POSTS': 25, 'SET': 26, 'TESTPOINT': 27, 'USE': 28, 'VARIANT': 29, 'allow': 32, 'amplifier': 33, 'bench': 34, 'board': 35, 'choice': 36, 'connector': 37, 'coupling': 38, 'design': 39, 'driver': 40, 'entry': 108, 'expect': 42, 'fit': 43, 'group': 44, 'include': 45, 'input': 46, 'layout': 47, 'leg': 48, 'let': 49, 'limit': 50, 'network': 51, 'omit': 52, 'part': 53, 'path': 54, 'position': 55, 'posts': 56, 'set': 57, 'station': 59, 'testpoint': 60, 'use': 61, 'variant': 62, 'walk': 63},
    {'_NL': 183},
    {'$END': -39, 'ALLOW': -39, 'AMPLIFIER': -39, 'BENCH': -39, 'BOARD': -39, 'CHOICE': -39, 'CONNECTOR': -39, 'COUPLING': -39, 'DESIGN': -39, 'DRIVER': -39, 'EXPECT': -39, 'FIT': -39, 'INCLUDE': -39, 'INPUT': -39, 'KIND': -39, 'LAYOUT': -39, 'LEG': -39, 'LET': -39, 'LIMIT': -39, 'LPAR': -39, 'NAME': -39, 'NETWORK': -39, 'OMIT': -39, 'PAD': -39, 'POSITION': -39, 'POSTS': -39, 'SET': -39, 'TESTPOINT': -39, 'USE': -39, 'VARIANT': -39},
    {'LPAR': 19, 'NAME': 20, 'PAD': 23, 'group': 44, 'path': 54, 'station': 184},
    {'ARROW': 185, 'COMMA': -346, 'RBRACE': -346, '_NL': -346},
    {'STRING': 186},
    {'NAME': 20, 'path': 187, 'together': 188},
    {'NAME': 20, 'path': 189},
    {'BECAUSE': 190},
    {'ABOVE': -92, 'AT': -92, 'BELOW': -92, 'CIRCUMFLEX': -92, 'COMMA': -92, 'FROM': -92, 'INTO': -92, 'LBRACE': -92, 'MINUS': -92, 'ON': -92, 'PLUS': -92, 'RBRACE': -92, 'RPAR': -92, 'SLASH': -92, 'STAR': -92, 'TO': -92, 'WITHIN': -92, '_NL': -92},
    {'ABOVE': -93, 'AT': -93, 'BELOW': -93, 'CIRCUMFLEX': -93, 'COMMA': -93, 'FROM': -93, 'INTO': -93, 'LBRACE': -93, 'MINUS': -93, 'ON': -93, 'PLUS': -93, 'RBRACE': -93, 'RPAR': -93, 'SLASH': -93, 'STAR': -93, 'TO': -93, 'WITHIN': -93, '_NL': -93},
    {'RPAR': 191},
    {'ABOVE': -341, 'AT': -341, 'BELOW': -341, 'CIRCUMFLEX': -341, 'COMMA': -341, 'FROM': -341, 'INTO': -341, 'LBRACE': -341, 'MINUS': -341, 'ON': -341, 'PLUS': -341, 'RBRACE': -341, 'RPAR': -341, 'SLASH': -341, 'STAR': -341, 'TO': -341, 'WITHIN': -341, '_NL': -341},
    {'ABOVE': -89, 'AT': -89, 'BELOW': -89, 'CIRCUMFLEX': -89, 'COMMA': -89, 'FROM': -89, 'INTO': -89, 'LBRACE': -89, 'MINUS': -89, 'ON': -89, 'PLUS': -89, 'RBRACE': -89, 'RPAR': -89, 'SLASH': -89, 'STAR': -89, 'TO': -89, 'WITHIN': -89, '_NL': -89},
    {'ABOVE': -90, 'AT': -90, 'BELOW': -90, 'CIRCUMFLEX': -90, 'COMMA': -90, 'FROM': -90, 'INTO': -90, 'LBRACE': -90, 'MINUS': -90, 'ON': -90, 'PLUS': -90, 'RBRACE': -90, 'RPAR': -90, 'SLASH': -90, 'STAR': -90, 'TO': -90, 'WITHIN': -90, '_NL': -90},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'atom': 71, 'expr': 192, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'atom': 71, 'power': 193, 'unary': 76},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'atom': 71, 'power': 194, 'unary': 76},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'atom': 71, 'power': 73, 'product': 195, 'unary': 76},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'atom': 71, 'power': 73, 'product': 196, 'unary': 76},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'atom': 71, 'power': 197, 'unary': 76},
    {'CIRCUMFLEX': -96, 'CODE': 65, 'COMMA': -96, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'PLUS': -96, 'RBRACE': -96, 'SLASH': -96, 'STAR': -96, 'STRING': 198, '_NL': -96, 'atom': 71, 'expr': 199, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'COMMA': -107, 'RBRACE': -107, '_NL': -107},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 128, 'NUMBER': 70, 'RBRACE': 200, '__block_star_17': 201, 'atom': 71, 'expr': 132, 'item': 202, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 128, 'NUMBER': 70, 'RBRACE': 203, 'atom': 71, 'expr': 132, 'item': 204, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'COMMA': -228, 'RBRACE': -228, '_NL': -228},
    {'COMMA': 205, 'RBRACE': 206, '_NL': 207, '_sep': 208},
    {'AREA': 209, 'COPPER': 210, 'CORNER': 211, 'FIXING': 212, 'HOLE': 213, 'HOLES': 214, 'OUTLINE': 215, 'RBRACE': 216, 'SEEN': 217, 'TAG': 218, 'TAGS': 219, 'THICKNESS': 220, 'TRACK': 221, '_NL': 222, '__board_star_11': 223, '_board_line': 224, 'area': 225, 'copper': 226, 'corner': 227, 'fixing': 228, 'hole': 229, 'holes': 230, 'outline': 231, 'seen': 232, 'tag': 233, 'tags': 234, 'thickness': 235, 'track': 236},
    {'LBRACE': 237},
    {'ALLOW': 1, 'AMPLIFIER': 2, 'BENCH': 3, 'BOARD': 4, 'CHOICE': 5, 'CONNECTOR': 6, 'COUPLING': 7, 'DESIGN': 8, 'DRIVER': 9, 'EXPECT': 10, 'FIT': 11, 'INCLUDE': 12, 'INPUT': 13, 'KIND': 14, 'LAYOUT': 15, 'LEG': 16, 'LET': 17, 'LIMIT': 18, 'LPAR': 19, 'NAME': 20, 'NETWORK': 21, 'OMIT': 22, 'PAD': 23, 'POSITION': 24, 'POSTS': 25, 'RBRACE': 238, 'SET': 26, 'TESTPOINT': 27, 'USE': 28, 'VARIANT': 29, '_NL': 239, '__body_star_16': 240, 'allow': 32, 'amplifier': 33, 'bench': 34, 'board': 35, 'choice': 36, 'connector': 37, 'coupling': 38, 'design': 39, 'driver': 40, 'entry': 241, 'expect': 42, 'fit': 43, 'group': 44, 'include': 45, 'input': 46, 'layout': 47, 'leg': 48, 'let': 49, 'limit': 50, 'network': 51, 'omit': 52, 'part': 53, 'path': 54, 'position': 55, 'posts': 56, 'set': 57, 'station': 59, 'testpoint': 60, 'use': 61, 'variant': 62, 'walk': 63},
    {'LBRACE': 136, 'body': 242},
    {'COMMA': -137, 'RBRACE': -137, '_NL': -137},
    {'NAME': 243, 'PIN': 244, 'RBRACE': 245, '_NL': 246, '__pins_star_1': 247, 'pin': 248},
    {'LBRACE': 139, 'THROUGH': 249, 'pins': 250},
    {'NAME': 251},
    {'COMMA': -145, 'RBRACE': -145, '_NL': -145},
    {'NAME': 20, 'path': 252},
    {'COMMA': -161, 'RBRACE': -161, '_NL': -161},
    {'COMMA': -160, 'LBRACE': 77, 'RBRACE': -160, '_NL': -160, 'block': 253},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'atom': 71, 'expr': 254, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'atom': 71, 'expr': 255, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'atom': 71, 'expr': 256, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'atom': 71, 'expr': 257, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'NAME': 20, 'path': 258},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'atom': 71, 'expr': 259, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'ABOVE': 146, 'AT': 147, 'BELOW': 148, 'COMMA': -200, 'FROM': 149, 'RBRACE': -200, 'WITHIN': 151, '_NL': -200, 'clause': 260},
    {'ABOVE': -9, 'AT': -9, 'BELOW': -9, 'COMMA': -9, 'FROM': -9, 'RBRACE': -9, 'WITHIN': -9, '_NL': -9},
    {'ABOVE': -227, 'AT': -227, 'BELOW': -227, 'COMMA': -227, 'FROM': -227, 'RBRACE': -227, 'WITHIN': -227, '_NL': -227},
    {'ABOVE': 146, 'AT': 147, 'BELOW': 148, 'COMMA': -199, 'FROM': 149, 'RBRACE': -199, 'WITHIN': 151, '_NL': -199, '__expect_star_8': 261, 'clause': 153},
    {'NAME': 20, 'path': 262},
    {'AND': 263, 'COMMA': -203, 'RBRACE': -203, '_NL': -203},
    {'LIBRARY': 264},
    {'COMMA': -270, 'RBRACE': -270, '_NL': -270},
    {'COMMA': -269, 'LBRACE': 77, 'RBRACE': -269, '_NL': -269, 'block': 265},
    {'AS': 266, 'LBRACE': 267},
    {'NAME': 268},
    {'AND': 269, 'LBRACE': 136, 'body': 270},
    {'COMMA': -255, 'RBRACE': -255, '_NL': -255},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'atom': 71, 'expr': 271, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'COMMA': -257, 'RBRACE': -257, '_NL': -257},
    {'RPAR': 272, 'VBAR': 169, '_NL': 273, '__group_star_4': 274},
    {'ARROW': -216, 'COMMA': -216, 'RBRACE': -216, 'RPAR': -216, 'VBAR': -216, '_NL': -216},
    {'LPAR': 19, 'NAME': 20, 'PAD': 23, '_NL': 275, 'chain': 276, 'group': 44, 'path': 54, 'station': 96},
    {'RPAR': 277, 'VBAR': 278},
    {'RPAR': 279, 'VBAR': 280, '_NL': 281},
    {'ARROW': 185, 'RPAR': -134, 'VBAR': -134, '_NL': -134},
    {'ABOVE': -33, 'AND': -33, 'ARROW': -33, 'AT': -33, 'BECAUSE': -33, 'BELOW': -33, 'CODE': -33, 'COMMA': -33, 'COMMA_NUMBER': -33, 'DOT': -33, 'EQUAL': -33, 'FROM': -33, 'IN': -33, 'LBRACE': -33, 'LPAR': -33, 'MINUS': -33, 'NAME': -33, 'NUMBER': -33, 'OFF_BOARD': -33, 'PLUS': -33, 'RBRACE': -33, 'RPAR': -33, 'TO': -33, 'VBAR': -33, 'WITHIN': -33, '_NL': -33},
    {'NAME': 282},
    {'NAME': 283},
    {'AND': 263, 'COMMA': -263, 'RBRACE': -263, '_NL': -263},
    {'LBRACE': 136, 'body': 284},
    {'COMMA': -304, 'RBRACE': -304, '_NL': -304},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'atom': 71, 'expr': 285, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'NAME': 286},
    {'LBRACE': 136, 'body': 287},
    {'COMMA': -345, 'RBRACE': -345, '_NL': -345},
    {'$END': -40, 'ALLOW': -40, 'AMPLIFIER': -40, 'BENCH': -40, 'BOARD': -40, 'CHOICE': -40, 'CONNECTOR': -40, 'COUPLING': -40, 'DESIGN': -40, 'DRIVER': -40, 'EXPECT': -40, 'FIT': -40, 'INCLUDE': -40, 'INPUT': -40, 'KIND': -40, 'LAYOUT': -40, 'LEG': -40, 'LET': -40, 'LIMIT': -40, 'LPAR': -40, 'NAME': -40, 'NETWORK': -40, 'OMIT': -40, 'PAD': -40, 'POSITION': -40, 'POSTS': -40, 'SET': -40, 'TESTPOINT': -40, 'USE': -40, 'VARIANT': -40},
    {'ARROW': -43, 'COMMA': -43, 'RBRACE': -43, 'RPAR': -43, 'VBAR': -43, '_NL': -43},
    {'LPAR': 19, 'NAME': 20, 'PAD': 23, 'group': 44, 'path': 54, 'station': 288},
    {'COMMA': -85, 'RBRACE': -85, '_NL': -85},
    {'AND': -337, 'BECAUSE': -337, 'PLUS': 289, '__together_star_10': 290},
    {'AND': 291, 'BECAUSE': -223, '__in_variants_star_9': 292},
    {'BECAUSE': 293, 'IN': 113, 'in_variants': 294},
    {'STRING': 295},
    {'ABOVE': -97, 'AT': -97, 'BELOW': -97, 'CIRCUMFLEX': -97, 'COMMA': -97, 'FROM': -97, 'INTO': -97, 'LBRACE': -97, 'MINUS': -97, 'ON': -97, 'PLUS': -97, 'RBRACE': -97, 'RPAR': -97, 'SLASH': -97, 'STAR': -97, 'TO': -97, 'WITHIN': -97, '_NL': -97},
    {'COMMA': -87, 'LBRACE': 77, 'RBRACE': -87, '_NL': -87, 'block': 296},
    {'ABOVE': -310, 'AT': -310, 'BELOW': -310, 'COMMA': -310, 'FROM': -310, 'INTO': -310, 'LBRACE': -310, 'MINUS': -310, 'ON': -310, 'PLUS': -310, 'RBRACE': -310, 'RPAR': -310, 'SLASH': -310, 'STAR': -310, 'TO': -310, 'WITHIN': -310, '_NL': -310},
    {'ABOVE': -309, 'AT': -309, 'BELOW': -309, 'COMMA': -309, 'FROM': -309, 'INTO': -309, 'LBRACE': -309, 'MINUS': -309, 'ON': -309, 'PLUS': -309, 'RBRACE': -309, 'RPAR': -309, 'SLASH': -309, 'STAR': -309, 'TO': -309, 'WITHIN': -309, '_NL': -309},
    {'ABOVE': -328, 'AT': -328, 'BELOW': -328, 'COMMA': -328, 'FROM': -328, 'INTO': -328, 'LBRACE': -328, 'MINUS': -328, 'ON': -328, 'PLUS': -328, 'RBRACE': -328, 'RPAR': -328, 'SLASH': 123, 'STAR': 124, 'TO': -328, 'WITHIN': -328, '_NL': -328},
    {'ABOVE': -327, 'AT': -327, 'BELOW': -327, 'COMMA': -327, 'FROM': -327, 'INTO': -327, 'LBRACE': -327, 'MINUS': -327, 'ON': -327, 'PLUS': -327, 'RBRACE': -327, 'RPAR': -327, 'SLASH': 123, 'STAR': 124, 'TO': -327, 'WITHIN': -327, '_NL': -327},
    {'ABOVE': -307, 'AT': -307, 'BELOW': -307, 'COMMA': -307, 'FROM': -307, 'INTO': -307, 'LBRACE': -307, 'MINUS': -307, 'ON': -307, 'PLUS': -307, 'RBRACE': -307, 'RPAR': -307, 'SLASH': -307, 'STAR': -307, 'TO': -307, 'WITHIN': -307, '_NL': -307},
    {'COMMA': -230, 'RBRACE': -230, '_NL': -230},
    {'COMMA': -229, 'RBRACE': -229, '_NL': -229},
    {'COMMA': -103, 'RBRACE': -103, '_NL': -103},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 128, 'NUMBER': 70, 'RBRACE': 297, 'atom': 71, 'expr': 132, 'item': 298, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'COMMA': 205, 'RBRACE': 299, '_NL': 207, '_sep': 208},
    {'COMMA': -105, 'RBRACE': -105, '_NL': -105},
    {'COMMA': 205, 'RBRACE': 300, '_NL': 207, '_sep': 301},
    {'ALLOW': -80, 'AMPLIFIER': -80, 'BENCH': -80, 'BOARD': -80, 'CHOICE': -80, 'CODE': -80, 'COMMA_NUMBER': -80, 'CONNECTOR': -80, 'COUPLING': -80, 'DESIGN': -80, 'DRIVER': -80, 'EXPECT': -80, 'FIT': -80, 'INCLUDE': -80, 'INPUT': -80, 'KIND': -80, 'LAYOUT': -80, 'LEG': -80, 'LET': -80, 'LIMIT': -80, 'LPAR': -80, 'MINUS': -80, 'NAME': -80, 'NETWORK': -80, 'NUMBER': -80, 'OMIT': -80, 'PAD': -80, 'POSITION': -80, 'POSTS': -80, 'RBRACE': -80, 'SET': -80, 'TESTPOINT': -80, 'USE': -80, 'VARIANT': -80, '_NL': 302},
    {'COMMA': -106, 'RBRACE': -106, '_NL': -106},
    {'ALLOW': -81, 'AMPLIFIER': -81, 'BENCH': -81, 'BOARD': -81, 'CHOICE': -81, 'CODE': -81, 'COMMA_NUMBER': -81, 'CONNECTOR': -81, 'COUPLING': -81, 'DESIGN': -81, 'DRIVER': -81, 'EXPECT': -81, 'FIT': -81, 'INCLUDE': -81, 'INPUT': -81, 'KIND': -81, 'LAYOUT': -81, 'LEG': -81, 'LET': -81, 'LIMIT': -81, 'LPAR': -81, 'MINUS': -81, 'NAME': -81, 'NETWORK': -81, 'NUMBER': -81, 'OMIT': -81, 'PAD': -81, 'POSITION': -81, 'POSTS': -81, 'RBRACE': -81, 'SET': -81, 'TESTPOINT': -81, 'USE': -81, 'VARIANT': -81},
    {'CODE': -3, 'COMMA_NUMBER': -3, 'LPAR': -3, 'MINUS': -3, 'NAME': -3, 'NUMBER': -3, 'RBRACE': -3},
    {'NAME': 303},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'ON': 304, 'atom': 71, 'expr': 305, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'POINT': 306, 'point': 307},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'atom': 71, 'expr': 308, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'NAME': 309},
    {'NAME': 310},
    {'POINT': 306, 'point': 311},
    {'COMMA': -123, 'RBRACE': -123, '_NL': -123},
    {'FROM': 312},
    {'NAME': 313},
    {'NAME': 314},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'atom': 71, 'expr': 315, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'atom': 71, 'expr': 316, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'AREA': 209, 'COPPER': 210, 'CORNER': 211, 'FIXING': 212, 'HOLE': 213, 'HOLES': 214, 'OUTLINE': 215, 'RBRACE': 317, 'SEEN': 217, 'TAG': 218, 'TAGS': 219, 'THICKNESS': 220, 'TRACK': 221, '__board_star_11': 318, '_board_line': 319, 'area': 225, 'copper': 226, 'corner': 227, 'fixing': 228, 'hole': 229, 'holes': 230, 'outline': 231, 'seen': 232, 'tag': 233, 'tags': 234, 'thickness': 235, 'track': 236},
    {'AREA': 209, 'COPPER': 210, 'CORNER': 211, 'FIXING': 212, 'HOLE': 213, 'HOLES': 214, 'OUTLINE': 215, 'RBRACE': 320, 'SEEN': 217, 'TAG': 218, 'TAGS': 219, 'THICKNESS': 220, 'TRACK': 221, '_board_line': 321, 'area': 225, 'copper': 226, 'corner': 227, 'fixing': 228, 'hole': 229, 'holes': 230, 'outline': 231, 'seen': 232, 'tag': 233, 'tags': 234, 'thickness': 235, 'track': 236},
    {'COMMA': 322, 'RBRACE': 323, '_NL': 324, '_line_end': 325},
    {'COMMA': -50, 'RBRACE': -50, '_NL': -50},
    {'COMMA': -47, 'RBRACE': -47, '_NL': -47},
    {'COMMA': -49, 'RBRACE': -49, '_NL': -49},
    {'COMMA': -56, 'RBRACE': -56, '_NL': -56},
    {'COMMA': -53, 'RBRACE': -53, '_NL': -53},
    {'COMMA': -52, 'RBRACE': -52, '_NL': -52},
    {'COMMA': -45, 'RBRACE': -45, '_NL': -45},
    {'COMMA': -48, 'RBRACE': -48, '_NL': -48},
    {'COMMA': -55, 'RBRACE': -55, '_NL': -55},
    {'COMMA': -54, 'RBRACE': -54, '_NL': -54},
    {'COMMA': -46, 'RBRACE': -46, '_NL': -46},
    {'COMMA': -51, 'RBRACE': -51, '_NL': -51},
    {'AREA': 209, 'COPPER': 210, 'CORNER': 211, 'FIXING': 212, 'HOLE': 213, 'HOLES': 214, 'OUTLINE': 215, 'RBRACE': 326, 'SEEN': 217, 'TAG': 218, 'TAGS': 219, 'THICKNESS': 220, 'TRACK': 221, '_NL': 327, '__board_star_11': 328, '_board_line': 329, 'area': 225, 'copper': 226, 'corner': 227, 'fixing': 228, 'hole': 229, 'holes': 230, 'outline': 231, 'seen': 232, 'tag': 233, 'tags': 234, 'thickness': 235, 'track': 236},
    {'COMMA': -131, 'RBRACE': -131, '_NL': -131},
    {'ALLOW': 1, 'AMPLIFIER': 2, 'BENCH': 3, 'BOARD': 4, 'CHOICE': 5, 'CONNECTOR': 6, 'COUPLING': 7, 'DESIGN': 8, 'DRIVER': 9, 'EXPECT': 10, 'FIT': 11, 'INCLUDE': 12, 'INPUT': 13, 'KIND': 14, 'LAYOUT': 15, 'LEG': 16, 'LET': 17, 'LIMIT': 18, 'LPAR': 19, 'NAME': 20, 'NETWORK': 21, 'OMIT': 22, 'PAD': 23, 'POSITION': 24, 'POSTS': 25, 'RBRACE': 330, 'SET': 26, 'TESTPOINT': 27, 'USE': 28, 'VARIANT': 29, '__body_star_16': 331, 'allow': 32, 'amplifier': 33, 'bench': 34, 'board': 35, 'choice': 36, 'connector': 37, 'coupling': 38, 'design': 39, 'driver': 40, 'entry': 332, 'expect': 42, 'fit': 43, 'group': 44, 'include': 45, 'input': 46, 'layout': 47, 'leg': 48, 'let': 49, 'limit': 50, 'network': 51, 'omit': 52, 'part': 53, 'path': 54, 'position': 55, 'posts': 56, 'set': 57, 'station': 59, 'testpoint': 60, 'use': 61, 'variant': 62, 'walk': 63},
    {'ALLOW': 1, 'AMPLIFIER': 2, 'BENCH': 3, 'BOARD': 4, 'CHOICE': 5, 'CONNECTOR': 6, 'COUPLING': 7, 'DESIGN': 8, 'DRIVER': 9, 'EXPECT': 10, 'FIT': 11, 'INCLUDE': 12, 'INPUT': 13, 'KIND': 14, 'LAYOUT': 15, 'LEG': 16, 'LET': 17, 'LIMIT': 18, 'LPAR': 19, 'NAME': 20, 'NETWORK': 21, 'OMIT': 22, 'PAD': 23, 'POSITION': 24, 'POSTS': 25, 'RBRACE': 333, 'SET': 26, 'TESTPOINT': 27, 'USE': 28, 'VARIANT': 29, 'allow': 32, 'amplifier': 33, 'bench': 34, 'board': 35, 'choice': 36, 'connector': 37, 'coupling': 38, 'design': 39, 'driver': 40, 'entry': 334, 'expect': 42, 'fit': 43, 'group': 44, 'include': 45, 'input': 46, 'layout': 47, 'leg': 48, 'let': 49, 'limit': 50, 'network': 51, 'omit': 52, 'part': 53, 'path': 54, 'position': 55, 'posts': 56, 'set': 57, 'station': 59, 'testpoint': 60, 'use': 61, 'variant': 62, 'walk': 63},
    {'COMMA': 205, 'RBRACE': 335, '_NL': 207, '_sep': 336},
    {'COMMA': -136, 'RBRACE': -136, '_NL': -136},
    {'PAD': 337, 'UNUSED': 338},
    {'PAD': 339, 'UNUSED': 340},
    {'COMMA': -285, 'RBRACE': -285, '_NL': -285},
    {'NAME': 243, 'PIN': 244, 'RBRACE': 341, '__pins_star_1': 342, 'pin': 343},
    {'NAME': 243, 'PIN': 244, 'RBRACE': 344, 'pin': 345},
    {'COMMA': 346, 'RBRACE': 347, '_NL': 348, '_pin_sep': 349},
    {'NAME': 350},
    {'COMMA': -143, 'RBRACE': -143, '_NL': -143},
    {'COMMA': -146, 'RBRACE': -146, '_NL': -146},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'atom': 71, 'expr': 351, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'COMMA': -159, 'RBRACE': -159, '_NL': -159},
    {'ABOVE': -140, 'AT': -140, 'BELOW': -140, 'COMMA': -140, 'FROM': -140, 'RBRACE': -140, 'WITHIN': -140, '_NL': -140},
    {'ABOVE': -138, 'AT': -138, 'BELOW': -138, 'COMMA': -138, 'FROM': -138, 'RBRACE': -138, 'WITHIN': -138, '_NL': -138},
    {'ABOVE': -141, 'AT': -141, 'BELOW': -141, 'COMMA': -141, 'FROM': -141, 'RBRACE': -141, 'WITHIN': -141, '_NL': -141},
    {'TO': 352},
    {'ABOVE': 146, 'AND': 156, 'AT': 147, 'BELOW': 148, 'CODE': 65, 'COMMA': -197, 'COMMA_NUMBER': 66, 'FROM': 149, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'RBRACE': -197, 'WITHIN': 151, '_NL': -197, '__expect_star_8': 353, '__omit_star_7': 354, 'atom': 71, 'clause': 153, 'expr': 154, 'is': 355, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'ABOVE': -139, 'AT': -139, 'BELOW': -139, 'COMMA': -139, 'FROM': -139, 'RBRACE': -139, 'WITHIN': -139, '_NL': -139},
    {'ABOVE': -10, 'AT': -10, 'BELOW': -10, 'COMMA': -10, 'FROM': -10, 'RBRACE': -10, 'WITHIN': -10, '_NL': -10},
    {'ABOVE': 146, 'AT': 147, 'BELOW': 148, 'COMMA': -198, 'FROM': 149, 'RBRACE': -198, 'WITHIN': 151, '_NL': -198, 'clause': 260},
    {'ABOVE': -31, 'AND': -31, 'AT': -31, 'BELOW': -31, 'CODE': -31, 'COMMA': -31, 'COMMA_NUMBER': -31, 'FROM': -31, 'LPAR': -31, 'MINUS': -31, 'NAME': -31, 'NUMBER': -31, 'RBRACE': -31, 'WITHIN': -31, '_NL': -31},
    {'NAME': 20, 'path': 356},
    {'COMMA': -224, 'RBRACE': -224, '_NL': -224},
    {'COMMA': -268, 'RBRACE': -268, '_NL': -268},
    {'NAME': 357},
    {'BUS': 358, 'CUT': 359, 'DEPTH': 360, 'DRILL': 361, 'JUMPER': 362, 'LEAD': 363, 'PLACE': 364, 'RBRACE': 365, '_NL': 366, '__layout_star_13': 367, '_layout_line': 368, 'bus': 369, 'cut': 370, 'depth': 371, 'drill': 372, 'jumper': 373, 'lead_out': 374, 'place': 375},
    {'AND': -27, 'LBRACE': -27},
    {'NAME': 376},
    {'COMMA': -254, 'RBRACE': -254, '_NL': -254},
    {'COMMA': -256, 'RBRACE': -256, '_NL': -256},
    {'ARROW': -212, 'COMMA': -212, 'RBRACE': -212, 'RPAR': -212, 'VBAR': -212, '_NL': -212},
    {'RPAR': 377, 'VBAR': 278},
    {'RPAR': 378, 'VBAR': 280, '_NL': 379},
    {'LPAR': 19, 'NAME': 20, 'PAD': 23, 'chain': 380, 'group': 44, 'path': 54, 'station': 96},
    {'RPAR': -16, 'VBAR': -16, '_NL': -16},
    {'ARROW': -215, 'COMMA': -215, 'RBRACE': -215, 'RPAR': -215, 'VBAR': -215, '_NL': -215},
    {'LPAR': 19, 'NAME': 20, 'PAD': 23, '_NL': 381, 'chain': 382, 'group': 44, 'path': 54, 'station': 96},
    {'ARROW': -214, 'COMMA': -214, 'RBRACE': -214, 'RPAR': -214, 'VBAR': -214, '_NL': -214},
    {'LPAR': 19, 'NAME': 20, 'PAD': 23, '_NL': 383, 'chain': 384, 'group': 44, 'path': 54, 'station': 96},
    {'RPAR': 385, 'VBAR': 386},
    {'ABOVE': -34, 'AND': -34, 'ARROW': -34, 'AT': -34, 'BECAUSE': -34, 'BELOW': -34, 'CODE': -34, 'COMMA': -34, 'COMMA_NUMBER': -34, 'DOT': -34, 'EQUAL': -34, 'FROM': -34, 'IN': -34, 'LBRACE': -34, 'LPAR': -34, 'MINUS': -34, 'NAME': -34, 'NUMBER': -34, 'OFF_BOARD': -34, 'PLUS': -34, 'RBRACE': -34, 'RPAR': -34, 'TO': -34, 'VBAR': -34, 'WITHIN': -34, '_NL': -34},
    {'COMMA': 387, 'RPAR': 388, '__network_star_5': 389},
    {'COMMA': -303, 'RBRACE': -303, '_NL': -303},
    {'COMMA': -313, 'RBRACE': -313, '_NL': -313},
    {'COMMA': -343, 'LBRACE': 77, 'RBRACE': -343, '_NL': -343, 'block': 390},
    {'COMMA': -344, 'RBRACE': -344, '_NL': -344},
    {'ARROW': -44, 'COMMA': -44, 'RBRACE': -44, 'RPAR': -44, 'VBAR': -44, '_NL': -44},
    {'NAME': 20, 'path': 391},
    {'AND': -336, 'BECAUSE': -336, 'PLUS': 392},
    {'NAME': 20, 'path': 187, 'together': 393},
    {'AND': 394, 'BECAUSE': -222},
    {'STRING': 395},
    {'BECAUSE': 396},
    {'COMMA': -84, 'RBRACE': -84, '_NL': -84},
    {'COMMA': -86, 'RBRACE': -86, '_NL': -86},
    {'COMMA': -101, 'RBRACE': -101, '_NL': -101},
    {'COMMA': 205, 'RBRACE': 397, '_NL': 207, '_sep': 301},
    {'COMMA': -102, 'RBRACE': -102, '_NL': -102},
    {'COMMA': -104, 'RBRACE': -104, '_NL': -104},
    {'CODE': -4, 'COMMA_NUMBER': -4, 'LPAR': -4, 'MINUS': -4, 'NAME': -4, 'NUMBER': -4, 'RBRACE': -4},
    {'ALLOW': -79, 'AMPLIFIER': -79, 'BENCH': -79, 'BOARD': -79, 'CHOICE': -79, 'CODE': -79, 'COMMA_NUMBER': -79, 'CONNECTOR': -79, 'COUPLING': -79, 'DESIGN': -79, 'DRIVER': -79, 'EXPECT': -79, 'FIT': -79, 'INCLUDE': -79, 'INPUT': -79, 'KIND': -79, 'LAYOUT': -79, 'LEG': -79, 'LET': -79, 'LIMIT': -79, 'LPAR': -79, 'MINUS': -79, 'NAME': -79, 'NETWORK': -79, 'NUMBER': -79, 'OMIT': -79, 'PAD': -79, 'POSITION': -79, 'POSTS': -79, 'RBRACE': -79, 'SET': -79, 'TESTPOINT': -79, 'USE': -79, 'VARIANT': -79},
    {'FROM': 398},
    {'PARTS': 399, 'SOLDER': 400, 'side': 401},
    {'ON': 402},
    {'NAME': 403},
    {'CUT': 404},
    {'AT': 405},
    {'OF': 406},
    {'NUMBER': 407},
    {'COMMA': -265, 'RBRACE': -265, '_NL': -265},
    {'PARTS': 399, 'SOLDER': 400, 'side': 408},
    {'AT': 409},
    {'NUMBER': 410},
    {'COMMA': -334, 'RBRACE': -334, '_NL': -334},
    {'FROM': 411},
    {'COMMA': -119, 'RBRACE': -119, '_NL': -119},
    {'AREA': 209, 'COPPER': 210, 'CORNER': 211, 'FIXING': 212, 'HOLE': 213, 'HOLES': 214, 'OUTLINE': 215, 'RBRACE': 412, 'SEEN': 217, 'TAG': 218, 'TAGS': 219, 'THICKNESS': 220, 'TRACK': 221, '_board_line': 413, 'area': 225, 'copper': 226, 'corner': 227, 'fixing': 228, 'hole': 229, 'holes': 230, 'outline': 231, 'seen': 232, 'tag': 233, 'tags': 234, 'thickness': 235, 'track': 236},
    {'COMMA': 322, 'RBRACE': 414, '_NL': 324, '_line_end': 325},
    {'COMMA': -121, 'RBRACE': -121, '_NL': -121},
    {'COMMA': 322, 'RBRACE': 415, '_NL': 324, '_line_end': 416},
    {'AREA': -74, 'BUS': -74, 'COPPER': -74, 'CORNER': -74, 'CUT': -74, 'DEPTH': -74, 'DRILL': -74, 'FIXING': -74, 'HOLE': -74, 'HOLES': -74, 'JUMPER': -74, 'LEAD': -74, 'OUTLINE': -74, 'PLACE': -74, 'RBRACE': -74, 'SEEN': -74, 'TAG': -74, 'TAGS': -74, 'THICKNESS': -74, 'TRACK': -74, '_NL': 417},
    {'COMMA': -122, 'RBRACE': -122, '_NL': -122},
    {'AREA': -75, 'BUS': -75, 'COPPER': -75, 'CORNER': -75, 'CUT': -75, 'DEPTH': -75, 'DRILL': -75, 'FIXING': -75, 'HOLE': -75, 'HOLES': -75, 'JUMPER': -75, 'LEAD': -75, 'OUTLINE': -75, 'PLACE': -75, 'RBRACE': -75, 'SEEN': -75, 'TAG': -75, 'TAGS': -75, 'THICKNESS': -75, 'TRACK': -75},
    {'AREA': -5, 'COPPER': -5, 'CORNER': -5, 'FIXING': -5, 'HOLE': -5, 'HOLES': -5, 'OUTLINE': -5, 'RBRACE': -5, 'SEEN': -5, 'TAG': -5, 'TAGS': -5, 'THICKNESS': -5, 'TRACK': -5},
    {'COMMA': -115, 'RBRACE': -115, '_NL': -115},
    {'AREA': 209, 'COPPER': 210, 'CORNER': 211, 'FIXING': 212, 'HOLE': 213, 'HOLES': 214, 'OUTLINE': 215, 'RBRACE': 418, 'SEEN': 217, 'TAG': 218, 'TAGS': 219, 'THICKNESS': 220, 'TRACK': 221, '__board_star_11': 419, '_board_line': 420, 'area': 225, 'copper': 226, 'corner': 227, 'fixing': 228, 'hole': 229, 'holes': 230, 'outline': 231, 'seen': 232, 'tag': 233, 'tags': 234, 'thickness': 235, 'track': 236},
    {'AREA': 209, 'COPPER': 210, 'CORNER': 211, 'FIXING': 212, 'HOLE': 213, 'HOLES': 214, 'OUTLINE': 215, 'RBRACE': 421, 'SEEN': 217, 'TAG': 218, 'TAGS': 219, 'THICKNESS': 220, 'TRACK': 221, '_board_line': 422, 'area': 225, 'copper': 226, 'corner': 227, 'fixing': 228, 'hole': 229, 'holes': 230, 'outline': 231, 'seen': 232, 'tag': 233, 'tags': 234, 'thickness': 235, 'track': 236},
    {'COMMA': 322, 'RBRACE': 423, '_NL': 324, '_line_end': 325},
    {'COMMA': -127, 'RBRACE': -127, '_NL': -127},
    {'ALLOW': 1, 'AMPLIFIER': 2, 'BENCH': 3, 'BOARD': 4, 'CHOICE': 5, 'CONNECTOR': 6, 'COUPLING': 7, 'DESIGN': 8, 'DRIVER': 9, 'EXPECT': 10, 'FIT': 11, 'INCLUDE': 12, 'INPUT': 13, 'KIND': 14, 'LAYOUT': 15, 'LEG': 16, 'LET': 17, 'LIMIT': 18, 'LPAR': 19, 'NAME': 20, 'NETWORK': 21, 'OMIT': 22, 'PAD': 23, 'POSITION': 24, 'POSTS': 25, 'RBRACE': 424, 'SET': 26, 'TESTPOINT': 27, 'USE': 28, 'VARIANT': 29, 'allow': 32, 'amplifier': 33, 'bench': 34, 'board': 35, 'choice': 36, 'connector': 37, 'coupling': 38, 'design': 39, 'driver': 40, 'entry': 425, 'expect': 42, 'fit': 43, 'group': 44, 'include': 45, 'input': 46, 'layout': 47, 'leg': 48, 'let': 49, 'limit': 50, 'network': 51, 'omit': 52, 'part': 53, 'path': 54, 'position': 55, 'posts': 56, 'set': 57, 'station': 59, 'testpoint': 60, 'use': 61, 'variant': 62, 'walk': 63},
    {'COMMA': 205, 'RBRACE': 426, '_NL': 207, '_sep': 336},
    {'COMMA': -129, 'RBRACE': -129, '_NL': -129},
    {'COMMA': 205, 'RBRACE': 427, '_NL': 207, '_sep': 428},
    {'COMMA': -130, 'RBRACE': -130, '_NL': -130},
    {'ALLOW': -7, 'AMPLIFIER': -7, 'BENCH': -7, 'BOARD': -7, 'CHOICE': -7, 'CONNECTOR': -7, 'COUPLING': -7, 'DESIGN': -7, 'DRIVER': -7, 'EXPECT': -7, 'FIT': -7, 'INCLUDE': -7, 'INPUT': -7, 'KIND': -7, 'LAYOUT': -7, 'LEG': -7, 'LET': -7, 'LIMIT': -7, 'LPAR': -7, 'NAME': -7, 'NETWORK': -7, 'OMIT': -7, 'PAD': -7, 'POSITION': -7, 'POSTS': -7, 'RBRACE': -7, 'SET': -7, 'TESTPOINT': -7, 'USE': -7, 'VARIANT': -7},
    {'COMMA': -276, 'RBRACE': -276, '_NL': -276},
    {'COMMA': -277, 'RBRACE': -277, '_NL': -277},
    {'COMMA': -274, 'RBRACE': -274, '_NL': -274},
    {'COMMA': -275, 'RBRACE': -275, '_NL': -275},
    {'COMMA': -281, 'RBRACE': -281, '_NL': -281},
    {'NAME': 243, 'PIN': 244, 'RBRACE': 429, 'pin': 430},
    {'COMMA': 346, 'RBRACE': 431, '_NL': 348, '_pin_sep': 349},
    {'COMMA': -283, 'RBRACE': -283, '_NL': -283},
    {'COMMA': 346, 'RBRACE': 432, '_NL': 348, '_pin_sep': 433},
    {'NAME': -77, 'PIN': -77, 'RBRACE': -77, '_NL': 434},
    {'COMMA': -284, 'RBRACE': -284, '_NL': -284},
    {'NAME': -78, 'PIN': -78, 'RBRACE': -78},
    {'NAME': -35, 'PIN': -35, 'RBRACE': -35},
    {'COMMA': -144, 'RBRACE': -144, '_NL': -144},
    {'COMMA': -150, 'RBRACE': -150, '_NL': -150},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'atom': 71, 'expr': 435, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'ABOVE': 146, 'AT': 147, 'BELOW': 148, 'COMMA': -196, 'FROM': 149, 'RBRACE': -196, 'WITHIN': 151, '_NL': -196, 'clause': 260},
    {'ABOVE': 146, 'AND': 263, 'AT': 147, 'BELOW': 148, 'CODE': 65, 'COMMA': -193, 'COMMA_NUMBER': 66, 'FROM': 149, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'RBRACE': -193, 'WITHIN': 151, '_NL': -193, '__expect_star_8': 436, 'atom': 71, 'clause': 153, 'expr': 154, 'is': 437, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'ABOVE': 146, 'AT': 147, 'BELOW': 148, 'COMMA': -195, 'FROM': 149, 'RBRACE': -195, 'WITHIN': 151, '_NL': -195, '__expect_star_8': 438, 'clause': 153},
    {'ABOVE': -32, 'AND': -32, 'AT': -32, 'BELOW': -32, 'CODE': -32, 'COMMA': -32, 'COMMA_NUMBER': -32, 'FROM': -32, 'LPAR': -32, 'MINUS': -32, 'NAME': -32, 'NUMBER': -32, 'RBRACE': -32, 'WITHIN': -32, '_NL': -32},
    {'LBRACE': 439},
    {'NAME': 20, 'PAD': 440, 'path': 441, 'spot': 442},
    {'FROM': 443},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'atom': 71, 'expr': 444, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'NAME': 445},
    {'NAME': 20, 'PAD': 440, 'path': 441, 'spot': 446},
    {'OUT': 447},
    {'NAME': 20, 'path': 448},
    {'COMMA': -248, 'RBRACE': -248, '_NL': -248},
    {'BUS': 358, 'CUT': 359, 'DEPTH': 360, 'DRILL': 361, 'JUMPER': 362, 'LEAD': 363, 'PLACE': 364, 'RBRACE': 449, '__layout_star_13': 450, '_layout_line': 451, 'bus': 369, 'cut': 370, 'depth': 371, 'drill': 372, 'jumper': 373, 'lead_out': 374, 'place': 375},
    {'BUS': 358, 'CUT': 359, 'DEPTH': 360, 'DRILL': 361, 'JUMPER': 362, 'LEAD': 363, 'PLACE': 364, 'RBRACE': 452, '_layout_line': 453, 'bus': 369, 'cut': 370, 'depth': 371, 'drill': 372, 'jumper': 373, 'lead_out': 374, 'place': 375},
    {'COMMA': 322, 'RBRACE': 454, '_NL': 324, '_line_end': 455},
    {'COMMA': -69, 'RBRACE': -69, '_NL': -69},
    {'COMMA': -66, 'RBRACE': -66, '_NL': -66},
    {'COMMA': -72, 'RBRACE': -72, '_NL': -72},
    {'COMMA': -67, 'RBRACE': -67, '_NL': -67},
    {'COMMA': -68, 'RBRACE': -68, '_NL': -68},
    {'COMMA': -71, 'RBRACE': -71, '_NL': -71},
    {'COMMA': -70, 'RBRACE': -70, '_NL': -70},
    {'AND': -28, 'LBRACE': -28},
    {'ARROW': -211, 'COMMA': -211, 'RBRACE': -211, 'RPAR': -211, 'VBAR': -211, '_NL': -211},
    {'ARROW': -210, 'COMMA': -210, 'RBRACE': -210, 'RPAR': -210, 'VBAR': -210, '_NL': -210},
    {'RPAR': 456, 'VBAR': 386},
    {'RPAR': -15, 'VBAR': -15, '_NL': -15},
    {'LPAR': 19, 'NAME': 20, 'PAD': 23, 'chain': 457, 'group': 44, 'path': 54, 'station': 96},
    {'RPAR': -14, 'VBAR': -14, '_NL': -14},
    {'LPAR': 19, 'NAME': 20, 'PAD': 23, 'chain': 458, 'group': 44, 'path': 54, 'station': 96},
    {'RPAR': -20, 'VBAR': -20, '_NL': -20},
    {'ARROW': -213, 'COMMA': -213, 'RBRACE': -213, 'RPAR': -213, 'VBAR': -213, '_NL': -213},
    {'LPAR': 19, 'NAME': 20, 'PAD': 23, '_NL': 459, 'chain': 460, 'group': 44, 'path': 54, 'station': 96},
    {'NAME': 461},
    {'GIVEN': 462, 'LBRACE': 136, 'body': 463, 'given': 464},
    {'COMMA': 465, 'RPAR': 466},
    {'COMMA': -342, 'RBRACE': -342, '_NL': -342},
    {'AND': -41, 'BECAUSE': -41, 'PLUS': -41},
    {'NAME': 20, 'path': 467},
    {'AND': -21, 'BECAUSE': -21},
    {'NAME': 20, 'path': 187, 'together': 468},
    {'COMMA': -83, 'RBRACE': -83, '_NL': -83},
    {'STRING': 469},
    {'COMMA': -100, 'RBRACE': -100, '_NL': -100},
    {'POINT': 306, 'point': 470},
    {'SIDE': 471},
    {'SIDE': 472},
    {'COMMA': -148, 'RBRACE': -148, '_NL': -148},
    {'PARTS': 399, 'SOLDER': 400, 'side': 473},
    {'COMMA': -302, 'CUT': -302, 'IN': -302, 'LBRACE': -302, 'ON': -302, 'RBRACE': -302, 'TO': -302, '_NL': -302},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'atom': 71, 'expr': 474, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'POINT': 306, 'point': 475},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'atom': 71, 'expr': 476, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'OF': 477},
    {'COMMA': -312, 'RBRACE': -312, '_NL': -312},
    {'POINT': 306, 'point': 478},
    {'FROM': 479},
    {'POINT': 306, 'point': 480},
    {'COMMA': -117, 'RBRACE': -117, '_NL': -117},
    {'COMMA': 322, 'RBRACE': 481, '_NL': 324, '_line_end': 416},
    {'COMMA': -118, 'RBRACE': -118, '_NL': -118},
    {'COMMA': -120, 'RBRACE': -120, '_NL': -120},
    {'AREA': -6, 'COPPER': -6, 'CORNER': -6, 'FIXING': -6, 'HOLE': -6, 'HOLES': -6, 'OUTLINE': -6, 'RBRACE': -6, 'SEEN': -6, 'TAG': -6, 'TAGS': -6, 'THICKNESS': -6, 'TRACK': -6},
    {'AREA': -73, 'BUS': -73, 'COPPER': -73, 'CORNER': -73, 'CUT': -73, 'DEPTH': -73, 'DRILL': -73, 'FIXING': -73, 'HOLE': -73, 'HOLES': -73, 'JUMPER': -73, 'LEAD': -73, 'OUTLINE': -73, 'PLACE': -73, 'RBRACE': -73, 'SEEN': -73, 'TAG': -73, 'TAGS': -73, 'THICKNESS': -73, 'TRACK': -73},
    {'COMMA': -111, 'RBRACE': -111, '_NL': -111},
    {'AREA': 209, 'COPPER': 210, 'CORNER': 211, 'FIXING': 212, 'HOLE': 213, 'HOLES': 214, 'OUTLINE': 215, 'RBRACE': 482, 'SEEN': 217, 'TAG': 218, 'TAGS': 219, 'THICKNESS': 220, 'TRACK': 221, '_board_line': 483, 'area': 225, 'copper': 226, 'corner': 227, 'fixing': 228, 'hole': 229, 'holes': 230, 'outline': 231, 'seen': 232, 'tag': 233, 'tags': 234, 'thickness': 235, 'track': 236},
    {'COMMA': 322, 'RBRACE': 484, '_NL': 324, '_line_end': 325},
    {'COMMA': -113, 'RBRACE': -113, '_NL': -113},
    {'COMMA': 322, 'RBRACE': 485, '_NL': 324, '_line_end': 416},
    {'COMMA': -114, 'RBRACE': -114, '_NL': -114},
    {'COMMA': -125, 'RBRACE': -125, '_NL': -125},
    {'COMMA': 205, 'RBRACE': 486, '_NL': 207, '_sep': 428},
    {'COMMA': -126, 'RBRACE': -126, '_NL': -126},
    {'COMMA': -128, 'RBRACE': -128, '_NL': -128},
    {'ALLOW': -8, 'AMPLIFIER': -8, 'BENCH': -8, 'BOARD': -8, 'CHOICE': -8, 'CONNECTOR': -8, 'COUPLING': -8, 'DESIGN': -8, 'DRIVER': -8, 'EXPECT': -8, 'FIT': -8, 'INCLUDE': -8, 'INPUT': -8, 'KIND': -8, 'LAYOUT': -8, 'LEG': -8, 'LET': -8, 'LIMIT': -8, 'LPAR': -8, 'NAME': -8, 'NETWORK': -8, 'OMIT': -8, 'PAD': -8, 'POSITION': -8, 'POSTS': -8, 'RBRACE': -8, 'SET': -8, 'TESTPOINT': -8, 'USE': -8, 'VARIANT': -8},
    {'COMMA': -279, 'RBRACE': -279, '_NL': -279},
    {'COMMA': 346, 'RBRACE': 487, '_NL': 348, '_pin_sep': 433},
    {'COMMA': -280, 'RBRACE': -280, '_NL': -280},
    {'COMMA': -282, 'RBRACE': -282, '_NL': -282},
    {'NAME': -36, 'PIN': -36, 'RBRACE': -36},
    {'NAME': -76, 'PIN': -76, 'RBRACE': -76},
    {'ABOVE': -142, 'AT': -142, 'BELOW': -142, 'COMMA': -142, 'FROM': -142, 'RBRACE': -142, 'WITHIN': -142, '_NL': -142},
    {'ABOVE': 146, 'AT': 147, 'BELOW': 148, 'COMMA': -192, 'FROM': 149, 'RBRACE': -192, 'WITHIN': 151, '_NL': -192, 'clause': 260},
    {'ABOVE': 146, 'AT': 147, 'BELOW': 148, 'COMMA': -191, 'FROM': 149, 'RBRACE': -191, 'WITHIN': 151, '_NL': -191, '__expect_star_8': 488, 'clause': 153},
    {'ABOVE': 146, 'AT': 147, 'BELOW': 148, 'COMMA': -194, 'FROM': 149, 'RBRACE': -194, 'WITHIN': 151, '_NL': -194, 'clause': 260},
    {'BUS': 358, 'CUT': 359, 'DEPTH': 360, 'DRILL': 361, 'JUMPER': 362, 'LEAD': 363, 'PLACE': 364, 'RBRACE': 489, '_NL': 490, '__layout_star_13': 491, '_layout_line': 492, 'bus': 369, 'cut': 370, 'depth': 371, 'drill': 372, 'jumper': 373, 'lead_out': 374, 'place': 375},
    {'AND': -316, 'ARROW': -316, 'COMMA': -316, 'LBRACE': -316, 'RBRACE': -316, 'TO': -316, '_NL': -316},
    {'AND': -318, 'ARROW': -318, 'COMMA': -318, 'LBRACE': -318, 'NUMBER': 493, 'RBRACE': -318, 'TO': -318, '_NL': -318},
    {'TO': 494},
    {'POINT': 306, 'point': 495},
    {'COMMA': -153, 'RBRACE': -153, '_NL': -153},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'atom': 71, 'expr': 496, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'ARROW': 497},
    {'NAME': 20, 'PAD': 440, 'path': 441, 'spot': 498},
    {'AT': 499, 'OFF_BOARD': 500},
    {'COMMA': -244, 'RBRACE': -244, '_NL': -244},
    {'BUS': 358, 'CUT': 359, 'DEPTH': 360, 'DRILL': 361, 'JUMPER': 362, 'LEAD': 363, 'PLACE': 364, 'RBRACE': 501, '_layout_line': 502, 'bus': 369, 'cut': 370, 'depth': 371, 'drill': 372, 'jumper': 373, 'lead_out': 374, 'place': 375},
    {'COMMA': 322, 'RBRACE': 503, '_NL': 324, '_line_end': 455},
    {'COMMA': -246, 'RBRACE': -246, '_NL': -246},
    {'COMMA': 322, 'RBRACE': 504, '_NL': 324, '_line_end': 505},
    {'COMMA': -247, 'RBRACE': -247, '_NL': -247},
    {'BUS': -23, 'CUT': -23, 'DEPTH': -23, 'DRILL': -23, 'JUMPER': -23, 'LEAD': -23, 'PLACE': -23, 'RBRACE': -23},
    {'ARROW': -209, 'COMMA': -209, 'RBRACE': -209, 'RPAR': -209, 'VBAR': -209, '_NL': -209},
    {'RPAR': -13, 'VBAR': -13, '_NL': -13},
    {'RPAR': -19, 'VBAR': -19, '_NL': -19},
    {'LPAR': 19, 'NAME': 20, 'PAD': 23, 'chain': 506, 'group': 44, 'path': 54, 'station': 96},
    {'RPAR': -18, 'VBAR': -18, '_NL': -18},
    {'COMMA': -29, 'RPAR': -29},
    {'NAME': 507, 'param': 508},
    {'COMMA': -261, 'RBRACE': -261, '_NL': -261},
    {'LBRACE': 136, 'body': 509},
    {'NAME': 510},
    {'GIVEN': 462, 'LBRACE': 136, 'body': 511, 'given': 512},
    {'AND': -42, 'BECAUSE': -42, 'PLUS': -42},
    {'AND': -22, 'BECAUSE': -22},
    {'COMMA': -82, 'RBRACE': -82, '_NL': -82},
    {'TO': 513, '__area_plus_12': 514},
    {'COMMA': -314, 'LBRACE': -314, 'RBRACE': -314, '_NL': -314},
    {'COMMA': -315, 'LBRACE': -315, 'RBRACE': -315, '_NL': -315},
    {'COMMA': -147, 'RBRACE': -147, '_NL': -147},
    {'COMMA': -149, 'RBRACE': -149, '_NL': -149},
    {'COMMA': -206, 'LBRACE': 77, 'RBRACE': -206, '_NL': -206, 'block': 515},
    {'AT': 516},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'atom': 71, 'expr': 517, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'COMMA': -330, 'LBRACE': 77, 'RBRACE': -330, '_NL': -330, 'block': 518},
    {'POINT': 306, 'point': 519},
    {'TO': 513, '__area_plus_12': 520},
    {'COMMA': -116, 'RBRACE': -116, '_NL': -116},
    {'COMMA': -109, 'RBRACE': -109, '_NL': -109},
    {'COMMA': 322, 'RBRACE': 521, '_NL': 324, '_line_end': 416},
    {'COMMA': -110, 'RBRACE': -110, '_NL': -110},
    {'COMMA': -112, 'RBRACE': -112, '_NL': -112},
    {'COMMA': -124, 'RBRACE': -124, '_NL': -124},
    {'COMMA': -278, 'RBRACE': -278, '_NL': -278},
    {'ABOVE': 146, 'AT': 147, 'BELOW': 148, 'COMMA': -190, 'FROM': 149, 'RBRACE': -190, 'WITHIN': 151, '_NL': -190, 'clause': 260},
    {'COMMA': -240, 'RBRACE': -240, '_NL': -240},
    {'BUS': 358, 'CUT': 359, 'DEPTH': 360, 'DRILL': 361, 'JUMPER': 362, 'LEAD': 363, 'PLACE': 364, 'RBRACE': 522, '__layout_star_13': 523, '_layout_line': 524, 'bus': 369, 'cut': 370, 'depth': 371, 'drill': 372, 'jumper': 373, 'lead_out': 374, 'place': 375},
    {'BUS': 358, 'CUT': 359, 'DEPTH': 360, 'DRILL': 361, 'JUMPER': 362, 'LEAD': 363, 'PLACE': 364, 'RBRACE': 525, '_layout_line': 526, 'bus': 369, 'cut': 370, 'depth': 371, 'drill': 372, 'jumper': 373, 'lead_out': 374, 'place': 375},
    {'COMMA': 322, 'RBRACE': 527, '_NL': 324, '_line_end': 455},
    {'AND': -317, 'ARROW': -317, 'COMMA': -317, 'LBRACE': -317, 'RBRACE': -317, 'TO': -317, '_NL': -317},
    {'NAME': 20, 'PAD': 440, 'path': 441, 'spot': 528},
    {'TO': 529},
    {'AT': 530},
    {'NAME': 20, 'PAD': 440, 'path': 441, 'spot': 531},
    {'TO': 532},
    {'POINT': 306, 'point': 533},
    {'COMMA': -289, 'LBRACE': 534, 'ON': 535, 'RBRACE': -289, '_NL': -289, 'placing': 536},
    {'COMMA': -242, 'RBRACE': -242, '_NL': -242},
    {'COMMA': 322, 'RBRACE': 537, '_NL': 324, '_line_end': 505},
    {'COMMA': -243, 'RBRACE': -243, '_NL': -243},
    {'COMMA': -245, 'RBRACE': -245, '_NL': -245},
    {'BUS': -24, 'CUT': -24, 'DEPTH': -24, 'DRILL': -24, 'JUMPER': -24, 'LEAD': -24, 'PLACE': -24, 'RBRACE': -24},
    {'RPAR': -17, 'VBAR': -17, '_NL': -17},
    {'COMMA': -267, 'EQUAL': 538, 'LBRACE': -267},
    {'COMMA': 539, 'LBRACE': -208, '__given_star_6': 540},
    {'COMMA': -260, 'RBRACE': -260, '_NL': -260},
    {'COMMA': -30, 'RPAR': -30},
    {'COMMA': -259, 'RBRACE': -259, '_NL': -259},
    {'LBRACE': 136, 'body': 541},
    {'POINT': 306, 'point': 542},
    {'COMMA': -88, 'RBRACE': -88, 'TO': 543, '_NL': -88},
    {'COMMA': -205, 'RBRACE': -205, '_NL': -205},
    {'POINT': 306, 'point': 544},
    {'FROM': 545},
    {'COMMA': -329, 'RBRACE': -329, '_NL': -329},
    {'TO': 546},
    {'COMMA': -339, 'LBRACE': 77, 'RBRACE': -339, 'TO': 543, '_NL': -339, 'block': 547},
    {'COMMA': -108, 'RBRACE': -108, '_NL': -108},
    {'COMMA': -236, 'RBRACE': -236, '_NL': -236},
    {'BUS': 358, 'CUT': 359, 'DEPTH': 360, 'DRILL': 361, 'JUMPER': 362, 'LEAD': 363, 'PLACE': 364, 'RBRACE': 548, '_layout_line': 549, 'bus': 369, 'cut': 370, 'depth': 371, 'drill': 372, 'jumper': 373, 'lead_out': 374, 'place': 375},
    {'COMMA': 322, 'RBRACE': 550, '_NL': 324, '_line_end': 455},
    {'COMMA': -238, 'RBRACE': -238, '_NL': -238},
    {'COMMA': 322, 'RBRACE': 551, '_NL': 324, '_line_end': 505},
    {'COMMA': -239, 'RBRACE': -239, '_NL': -239},
    {'COMMA': -133, 'LBRACE': 77, 'RBRACE': -133, '_NL': -133, 'block': 552},
    {'POINT': 306, 'point': 553},
    {'POINT': 306, 'point': 554},
    {'COMMA': -232, 'LBRACE': 77, 'RBRACE': -232, '_NL': -232, 'block': 555},
    {'NAME': 20, 'PAD': 440, 'path': 441, 'spot': 556},
    {'COMMA': -293, 'LBRACE': 534, 'ON': 557, 'RBRACE': -293, '_NL': -293, 'placing': 558},
    {'AXIS': 559, 'LEADS': 560, 'NAME': 561, 'RAISED': 562, 'RBRACE': 563, 'TIE': 564, '_NL': 565, '__placing_star_14': 566, '_how': 567, 'axis': 568, 'lead': 569, 'leads': 570, 'note': 571, 'raised': 572, 'tie': 573},
    {'PARTS': 399, 'SOLDER': 400, 'side': 574},
    {'COMMA': -288, 'RBRACE': -288, '_NL': -288},
    {'COMMA': -241, 'RBRACE': -241, '_NL': -241},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'atom': 71, 'expr': 575, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'NAME': 507, 'param': 576},
    {'COMMA': 577, 'LBRACE': -207},
    {'COMMA': -258, 'RBRACE': -258, '_NL': -258},
    {'COMMA': -1, 'LBRACE': -1, 'RBRACE': -1, 'TO': -1, '_NL': -1},
    {'POINT': 306, 'point': 578},
    {'COMMA': -218, 'LBRACE': 77, 'RBRACE': -218, '_NL': -218, 'block': 579},
    {'POINT': 306, 'point': 580},
    {'POINT': 306, 'point': 581},
    {'COMMA': -338, 'RBRACE': -338, '_NL': -338},
    {'COMMA': -234, 'RBRACE': -234, '_NL': -234},
    {'COMMA': 322, 'RBRACE': 582, '_NL': 324, '_line_end': 505},
    {'COMMA': -235, 'RBRACE': -235, '_NL': -235},
    {'COMMA': -237, 'RBRACE': -237, '_NL': -237},
    {'COMMA': -132, 'RBRACE': -132, '_NL': -132},
    {'COMMA': -152, 'LBRACE': 77, 'RBRACE': -152, '_NL': -152, 'block': 583},
    {'COMMA': -158, 'IN': 584, 'LBRACE': 77, 'RBRACE': -158, '_NL': -158, 'block': 585, 'in_area': 586},
    {'COMMA': -231, 'RBRACE': -231, '_NL': -231},
    {'COMMA': -251, 'LBRACE': 77, 'RBRACE': -251, '_NL': -251, 'block': 587},
    {'PARTS': 399, 'SOLDER': 400, 'side': 588},
    {'COMMA': -292, 'RBRACE': -292, '_NL': -292},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'atom': 71, 'expr': 589, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'INTO': 590},
    {'INTO': 591, 'STRING': 592},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'atom': 71, 'expr': 593, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'COMMA': -301, 'RBRACE': -301, '_NL': -301},
    {'CODE': 65, 'COMMA_NUMBER': 66, 'LPAR': 67, 'MINUS': 68, 'NAME': 69, 'NUMBER': 70, 'atom': 71, 'expr': 594, 'power': 73, 'product': 74, 'sum': 75, 'unary': 76},
    {'AXIS': 559, 'LEADS': 560, 'NAME': 561, 'RAISED': 562, 'RBRACE': 595, 'TIE': 564, '__placing_star_14': 596, '_how': 597, 'axis': 568, 'lead': 569, 'leads': 570, 'note': 571, 'raised': 572, 'tie': 573},
    {'AXIS': 559, 'LEADS': 560, 'NAME': 561, 'RAISED': 562, 'RBRACE': 598, 'TIE': 564, '_how': 599, 'axis': 568, 'lead': 569, 'leads': 570, 'note': 571, 'raised': 572, 'tie': 573},
    {'COMMA': 600, 'RBRACE': 601, '_NL': 602, '_how_end': 603},
    {'COMMA': -57, 'RBRACE': -57, '_NL': -57},
    {'COMMA': -58, 'RBRACE': -58, '_NL': -58},
    {'COMMA': -59, 'RBRACE': -59, '_NL': -59},
    {'COMMA': -62, 'RBRACE': -62, '_NL': -62},
    {'COMMA': -61, 'RBRACE': -61, '_NL': -61},
    {'COMMA': -60, 'RBRACE': -60, '_NL': -60},
    {'COMMA': -287, 'LBRACE': 534, 'RBRACE': -287, '_NL': -287, 'placing': 604},
    {'COMMA': -266, 'LBRACE': -266},
    {'COMMA': -11, 'LBRACE': -11},
    {'NAME': 507, 'param': 605},
    {'COMMA': -2, 'LBRACE': -2, 'RBRACE': -2, 'TO': -2, '_NL': -2},
    {'COMMA': -217, 'RBRACE': -217, '_NL': -217},
    {'TO': 606},
    {'COMMA': -332, 'LBRACE': 77, 'RBRACE': -332, '_NL': -332, 'block': 607},
    {'COMMA': -233, 'RBRACE': -233, '_NL': -233},
    {'COMMA': -151, 'RBRACE': -151, '_NL': -151},
    {'NAME': 608},
    {'COMMA': -157, 'RBRACE': -157, '_NL': -157},
    {'COMMA': -156, 'LBRACE': 77, 'RBRACE': -156, '_NL': -156, 'block': 609},
    {'COMMA': -250, 'RBRACE': -250, '_NL': -250},
    {'COMMA': -291, 'LBRACE': 534, 'RBRACE': -291, '_NL': -291, 'placing': 610},
    {'COMMA': -98, 'RBRACE': -98, '_NL': -98},
    {'NAME': 20, 'PAD': 440, 'path': 441, 'spot': 611},
    {'NAME': 20, 'PAD': 440, 'path': 441, 'spot': 612},
    {'COMMA': -262, 'RBRACE': -262, '_NL': -262},
    {'COMMA': -311, 'RBRACE': -311, '_NL': -311},
    {'FROM': 613},
    {'COMMA': -297, 'RBRACE': -297, '_NL': -297},
    {'AXIS': 559, 'LEADS': 560, 'NAME': 561, 'RAISED': 562, 'RBRACE': 614, 'TIE': 564, '_how': 615, 'axis': 568, 'lead': 569, 'leads': 570, 'note': 571, 'raised': 572, 'tie': 573},
    {'COMMA': 600, 'RBRACE': 616, '_NL': 602, '_how_end': 603},
    {'COMMA': -299, 'RBRACE': -299, '_NL': -299},
    {'COMMA': 600, 'RBRACE': 617, '_NL': 602, '_how_end': 618},
    {'AXIS': -64, 'LEADS': -64, 'NAME': -64, 'RAISED': -64, 'RBRACE': -64, 'TIE': -64, '_NL': 619},
    {'COMMA': -300, 'RBRACE': -300, '_NL': -300},
    {'AXIS': -65, 'LEADS': -65, 'NAME': -65, 'RAISED': -65, 'RBRACE': -65, 'TIE': -65},
    {'AXIS': -37, 'LEADS': -37, 'NAME': -37, 'RAISED': -37, 'RBRACE': -37, 'TIE': -37},
    {'COMMA': -286, 'RBRACE': -286, '_NL': -286},
    {'COMMA': -12, 'LBRACE': -12},
    {'POINT': 306, 'point': 620},
    {'COMMA': -331, 'RBRACE': -331, '_NL': -331},
    {'COMMA': -221, 'LBRACE': -221, 'RBRACE': -221, '_NL': -221},
    {'COMMA': -155, 'RBRACE': -155, '_NL': -155},
    {'COMMA': -290, 'RBRACE': -290, '_NL': -290},
    {'AND': 621, 'COMMA': -253, 'RBRACE': -253, '_NL': -253, '__leads_star_15': 622},
    {'COMMA': -249, 'RBRACE': -249, '_NL': -249},
    {'POINT': 306, 'point': 623},
    {'COMMA': -295, 'RBRACE': -295, '_NL': -295},
    {'COMMA': 600, 'RBRACE': 624, '_NL': 602, '_how_end': 618},
    {'COMMA': -296, 'RBRACE': -296, '_NL': -296},
    {'COMMA': -298, 'RBRACE': -298, '_NL': -298},
    {'AXIS': -38, 'LEADS': -38, 'NAME': -38, 'RAISED': -38, 'RBRACE': -38, 'TIE': -38},
    {'AXIS': -63, 'LEADS': -63, 'NAME': -63, 'RAISED': -63, 'RBRACE': -63, 'TIE': -63},
    {'COMMA': -220, 'LBRACE': 77, 'RBRACE': -220, '_NL': -220, 'block': 625},
    {'NAME': 20, 'PAD': 440, 'path': 441, 'spot': 626},
    {'AND': 627, 'COMMA': -252, 'RBRACE': -252, '_NL': -252},
    {'TO': 628},
    {'COMMA': -294, 'RBRACE': -294, '_NL': -294},
    {'COMMA': -219, 'RBRACE': -219, '_NL': -219},
    {'AND': -25, 'COMMA': -25, 'RBRACE': -25, '_NL': -25},
    {'NAME': 20, 'PAD': 440, 'path': 441, 'spot': 629},
    {'POINT': 306, 'point': 630},
    {'AND': -26, 'COMMA': -26, 'RBRACE': -26, '_NL': -26},
    {'COMMA': -335, 'RBRACE': -335, '_NL': -335},
)

DESIGN = Tables(START, END, IGNORED, TERMINALS, KEYWORDS, RULES, STATES)
