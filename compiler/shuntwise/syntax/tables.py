"""The automaton's tables. Do not edit: made from the grammar by `python -m shuntwise.house.tables`.

`TERMINALS` are patterns in the order in which they are tried, `KEYWORDS` words that are names elsewhere. A rule is
its symbol, its node's name (None: its children go to the rule above), its length, the places of the children that
are kept, and whether a lone child stands for the node. A state leads by symbol to another, or (below zero) to the
rule ~n that is then reduced. `PART_KINDS` are the words that declare a part, each with an example of what follows.

The module is long because it is a table.
"""

from __future__ import annotations

START, END = 0, 56
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
    'CONNECTOR': 'connector(?=[ \t\xa0]+[^\\W\\d]|[ \t\xa0]*\\{)',
    'POSITION': 'position(?=[ \t\xa0]+[^\\W\\d]|[ \t\xa0]*\\{)',
    'CHOICE': 'choice(?=[ \t\xa0]+[^\\W\\d]|[ \t\xa0]*\\{)',
    'LAYOUT': 'layout(?=[ \t\xa0]+[^\\W\\d]|[ \t\xa0]*\\{)',
    'BOARD': 'board(?=[ \t\xa0]+[^\\W\\d]|[ \t\xa0]*\\{)',
    'COMMA_NUMBER': '[0-9]+,[0-9]+(?:[eE][+-]?[0-9]+)?',
    'NUMBER': '(?:[0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)(?:[eE][+-]?[0-9]+(?!\\w))?',
    '_NL': '\r?\n(?:[ \t\xa0]*(?:#[^\n]*)?\r?\n)*',
    'ARROW': '--(?:[ \t\xa0]*(?:#[^\n]*)?\r?\n)*',
    'NAME': 'non-polar(?!\\w)|[^\\W\\d]\\w*',
    'OFF_BOARD': 'off[ \t\xa0]+board(?!\\w)',
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
    ('__board_star_11', None, 2, (0, 1), False),  # __board_star_11: _board_line _sep
    ('__board_star_11', None, 3, (0, 1, 2), False),  # __board_star_11: __board_star_11 _board_line _sep
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
    ('__layout_star_13', None, 2, (0, 1), False),  # __layout_star_13: _layout_line _sep
    ('__layout_star_13', None, 3, (0, 1, 2), False),  # __layout_star_13: __layout_star_13 _layout_line _sep
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
    ('__placing_star_14', None, 2, (0, 1), False),  # __placing_star_14: _how _sep
    ('__placing_star_14', None, 3, (0, 1, 2), False),  # __placing_star_14: __placing_star_14 _how _sep
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
    ('_layout_line', None, 1, (0,), False),  # _layout_line: cut
    ('_layout_line', None, 1, (0,), False),  # _layout_line: drill
    ('_layout_line', None, 1, (0,), False),  # _layout_line: jumper
    ('_layout_line', None, 1, (0,), False),  # _layout_line: bus
    ('_layout_line', None, 1, (0,), False),  # _layout_line: place
    ('_layout_line', None, 1, (0,), False),  # _layout_line: lead_out
    ('_layout_line', None, 1, (0,), False),  # _layout_line: depth
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
    {'$END': -314, 'ALLOW': 1, 'AMPLIFIER': 2, 'BOARD': 3, 'CHOICE': 4, 'CONNECTOR': 5, 'COUPLING': 6, 'DESIGN': 7, 'DRIVER': 8, 'EXPECT': 9, 'FIT': 10, 'INCLUDE': 11, 'INPUT': 12, 'KIND': 13, 'LAYOUT': 14, 'LEG': 15, 'LET': 16, 'LIMIT': 17, 'LPAR': 18, 'NAME': 19, 'NETWORK': 20, 'OMIT': 21, 'PAD': 22, 'POSITION': 23, 'POSTS': 24, 'SET': 25, 'TESTPOINT': 26, 'USE': 27, 'VARIANT': 28, '_NL': 29, '__start_star_0': 30, 'allow': 31, 'amplifier': 32, 'board': 33, 'choice': 34, 'connector': 35, 'coupling': 36, 'design': 37, 'driver': 38, 'entry': 39, 'expect': 40, 'fit': 41, 'group': 42, 'include': 43, 'input': 44, 'layout': 45, 'leg': 46, 'let': 47, 'limit': 48, 'network': 49, 'omit': 50, 'part': 51, 'path': 52, 'position': 53, 'posts': 54, 'set': 55, 'start': 56, 'station': 57, 'testpoint': 58, 'use': 59, 'variant': 60, 'walk': 61},
    {'FINDING': 62},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'atom': 69, 'expr': 70, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'NAME': 75},
    {'NAME': 76},
    {'NAME': 77},
    {'NAME': 19, 'path': 78},
    {'STRING': 79},
    {'NAME': 80},
    {'NAME': 81},
    {'NAME': 19, 'path': 82},
    {'STRING': 83},
    {'NAME': 84},
    {'NAME': 85},
    {'ON': 86},
    {'NAME': 87},
    {'NAME': 88},
    {'FINDING': 89},
    {'LPAR': 18, 'NAME': 19, 'PAD': 22, '_NL': 90, 'chain': 91, 'group': 42, 'path': 52, 'station': 92},
    {'ABOVE': -265, 'AND': -265, 'ARROW': -265, 'AT': -265, 'BECAUSE': -265, 'BELOW': -265, 'CODE': -265, 'COMMA': -265, 'COMMA_NUMBER': -265, 'DOT': 93, 'EQUAL': -265, 'FROM': -265, 'IN': -265, 'LBRACE': -265, 'LPAR': -265, 'MINUS': -265, 'NAME': -265, 'NUMBER': -265, 'OFF_BOARD': -265, 'PLUS': -265, 'RBRACE': -265, 'RPAR': -265, 'TO': -265, 'VBAR': -265, 'WITHIN': -265, '_NL': -265, '__path_star_18': 94},
    {'NAME': 95},
    {'NAME': 19, 'path': 96},
    {'ARROW': -315, 'COMMA': -315, 'RBRACE': -315, 'RPAR': -315, 'VBAR': -315, '_NL': -315},
    {'NAME': 97},
    {'NAME': 98},
    {'NAME': 19, 'path': 99},
    {'NAME': 100},
    {'NAME': 101},
    {'NAME': 102},
    {'$END': -312, 'ALLOW': 1, 'AMPLIFIER': 2, 'BOARD': 3, 'CHOICE': 4, 'CONNECTOR': 5, 'COUPLING': 6, 'DESIGN': 7, 'DRIVER': 8, 'EXPECT': 9, 'FIT': 10, 'INCLUDE': 11, 'INPUT': 12, 'KIND': 13, 'LAYOUT': 14, 'LEG': 15, 'LET': 16, 'LIMIT': 17, 'LPAR': 18, 'NAME': 19, 'NETWORK': 20, 'OMIT': 21, 'PAD': 22, 'POSITION': 23, 'POSTS': 24, 'SET': 25, 'TESTPOINT': 26, 'USE': 27, 'VARIANT': 28, '__start_star_0': 103, 'allow': 31, 'amplifier': 32, 'board': 33, 'choice': 34, 'connector': 35, 'coupling': 36, 'design': 37, 'driver': 38, 'entry': 39, 'expect': 40, 'fit': 41, 'group': 42, 'include': 43, 'input': 44, 'layout': 45, 'leg': 46, 'let': 47, 'limit': 48, 'network': 49, 'omit': 50, 'part': 51, 'path': 52, 'position': 53, 'posts': 54, 'set': 55, 'station': 57, 'testpoint': 58, 'use': 59, 'variant': 60, 'walk': 61},
    {'$END': -313, 'ALLOW': 1, 'AMPLIFIER': 2, 'BOARD': 3, 'CHOICE': 4, 'CONNECTOR': 5, 'COUPLING': 6, 'DESIGN': 7, 'DRIVER': 8, 'EXPECT': 9, 'FIT': 10, 'INCLUDE': 11, 'INPUT': 12, 'KIND': 13, 'LAYOUT': 14, 'LEG': 15, 'LET': 16, 'LIMIT': 17, 'LPAR': 18, 'NAME': 19, 'NETWORK': 20, 'OMIT': 21, 'PAD': 22, 'POSITION': 23, 'POSTS': 24, 'SET': 25, 'TESTPOINT': 26, 'USE': 27, 'VARIANT': 28, 'allow': 31, 'amplifier': 32, 'board': 33, 'choice': 34, 'connector': 35, 'coupling': 36, 'design': 37, 'driver': 38, 'entry': 104, 'expect': 40, 'fit': 41, 'group': 42, 'include': 43, 'input': 44, 'layout': 45, 'leg': 46, 'let': 47, 'limit': 48, 'network': 49, 'omit': 50, 'part': 51, 'path': 52, 'position': 53, 'posts': 54, 'set': 55, 'station': 57, 'testpoint': 58, 'use': 59, 'variant': 60, 'walk': 61},
    {'COMMA': -178, 'RBRACE': -178, '_NL': -178},
    {'COMMA': -157, 'RBRACE': -157, '_NL': -157},
    {'COMMA': -180, 'RBRACE': -180, '_NL': -180},
    {'COMMA': -174, 'RBRACE': -174, '_NL': -174},
    {'COMMA': -160, 'RBRACE': -160, '_NL': -160},
    {'COMMA': -163, 'RBRACE': -163, '_NL': -163},
    {'COMMA': -156, 'RBRACE': -156, '_NL': -156},
    {'COMMA': -161, 'RBRACE': -161, '_NL': -161},
    {'_NL': 105},
    {'COMMA': -177, 'RBRACE': -177, '_NL': -177},
    {'COMMA': -171, 'RBRACE': -171, '_NL': -171},
    {'ARROW': -317, 'COMMA': -317, 'RBRACE': -317, 'RPAR': -317, 'VBAR': -317, '_NL': -317},
    {'COMMA': -176, 'RBRACE': -176, '_NL': -176},
    {'COMMA': -158, 'RBRACE': -158, '_NL': -158},
    {'COMMA': -181, 'RBRACE': -181, '_NL': -181},
    {'COMMA': -167, 'RBRACE': -167, '_NL': -167},
    {'COMMA': -164, 'RBRACE': -164, '_NL': -164},
    {'COMMA': -179, 'RBRACE': -179, '_NL': -179},
    {'COMMA': -165, 'RBRACE': -165, '_NL': -165},
    {'COMMA': -170, 'RBRACE': -170, '_NL': -170},
    {'COMMA': -162, 'RBRACE': -162, '_NL': -162},
    {'ARROW': -316, 'COMMA': -316, 'RBRACE': -316, 'RPAR': -316, 'VBAR': -316, '_NL': -316},
    {'COMMA': -175, 'RBRACE': -175, '_NL': -175},
    {'COMMA': -159, 'RBRACE': -159, '_NL': -159},
    {'COMMA': -172, 'RBRACE': -172, '_NL': -172},
    {},
    {'ARROW': 106, 'COMMA': -339, 'RBRACE': -339, '_NL': -339, '__walk_star_3': 107},
    {'COMMA': -169, 'RBRACE': -169, '_NL': -169},
    {'COMMA': -166, 'RBRACE': -166, '_NL': -166},
    {'COMMA': -173, 'RBRACE': -173, '_NL': -173},
    {'COMMA': -168, 'RBRACE': -168, '_NL': -168},
    {'BECAUSE': 108, 'IN': 109, 'ON': 110, 'in_variants': 111},
    {'ABOVE': -89, 'AT': -89, 'BELOW': -89, 'CIRCUMFLEX': -89, 'COMMA': -89, 'FROM': -89, 'INTO': -89, 'LBRACE': -89, 'MINUS': -89, 'ON': -89, 'PLUS': -89, 'RBRACE': -89, 'RPAR': -89, 'SLASH': -89, 'STAR': -89, 'TO': -89, 'WITHIN': -89, '_NL': -89},
    {'ABOVE': -88, 'AT': -88, 'BELOW': -88, 'CIRCUMFLEX': -88, 'COMMA': -88, 'FROM': -88, 'INTO': -88, 'LBRACE': -88, 'MINUS': -88, 'NAME': 112, 'ON': -88, 'PERCENT': 113, 'PLUS': -88, 'RBRACE': -88, 'RPAR': -88, 'SLASH': -88, 'STAR': -88, 'TO': -88, 'WITHIN': -88, '_NL': -88},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'atom': 69, 'expr': 114, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'atom': 69, 'unary': 115},
    {'ABOVE': -90, 'AT': -90, 'BELOW': -90, 'CIRCUMFLEX': -90, 'COMMA': -90, 'FROM': -90, 'INTO': -90, 'LBRACE': -90, 'MINUS': -90, 'ON': -90, 'PLUS': -90, 'RBRACE': -90, 'RPAR': -90, 'SLASH': -90, 'STAR': -90, 'TO': -90, 'WITHIN': -90, '_NL': -90},
    {'ABOVE': -85, 'AT': -85, 'BELOW': -85, 'CIRCUMFLEX': -85, 'COMMA': -85, 'FROM': -85, 'INTO': -85, 'LBRACE': -85, 'MINUS': -85, 'NAME': 116, 'ON': -85, 'PERCENT': 117, 'PLUS': -85, 'RBRACE': -85, 'RPAR': -85, 'SLASH': -85, 'STAR': -85, 'TO': -85, 'WITHIN': -85, '_NL': -85},
    {'ABOVE': -332, 'AT': -332, 'BELOW': -332, 'CIRCUMFLEX': -332, 'COMMA': -332, 'FROM': -332, 'INTO': -332, 'LBRACE': -332, 'MINUS': -332, 'ON': -332, 'PLUS': -332, 'RBRACE': -332, 'RPAR': -332, 'SLASH': -332, 'STAR': -332, 'TO': -332, 'WITHIN': -332, '_NL': -332},
    {'INTO': 118},
    {'ABOVE': -300, 'AT': -300, 'BELOW': -300, 'COMMA': -300, 'FROM': -300, 'INTO': -300, 'LBRACE': -300, 'MINUS': -300, 'ON': -300, 'PLUS': -300, 'RBRACE': -300, 'RPAR': -300, 'SLASH': -300, 'STAR': -300, 'TO': -300, 'WITHIN': -300, '_NL': -300},
    {'ABOVE': -318, 'AT': -318, 'BELOW': -318, 'COMMA': -318, 'FROM': -318, 'INTO': -318, 'LBRACE': -318, 'MINUS': -318, 'ON': -318, 'PLUS': -318, 'RBRACE': -318, 'RPAR': -318, 'SLASH': 119, 'STAR': 120, 'TO': -318, 'WITHIN': -318, '_NL': -318},
    {'ABOVE': -194, 'AT': -194, 'BELOW': -194, 'COMMA': -194, 'FROM': -194, 'INTO': -194, 'LBRACE': -194, 'MINUS': 121, 'ON': -194, 'PLUS': 122, 'RBRACE': -194, 'RPAR': -194, 'TO': -194, 'WITHIN': -194, '_NL': -194},
    {'ABOVE': -298, 'AT': -298, 'BELOW': -298, 'CIRCUMFLEX': 123, 'COMMA': -298, 'FROM': -298, 'INTO': -298, 'LBRACE': -298, 'MINUS': -298, 'ON': -298, 'PLUS': -298, 'RBRACE': -298, 'RPAR': -298, 'SLASH': -298, 'STAR': -298, 'TO': -298, 'WITHIN': -298, '_NL': -298},
    {'LBRACE': 124, 'STRING': 125},
    {'LBRACE': 126, 'STRING': 127, 'body': 128},
    {'LBRACE': 129, 'STRING': 130, 'THROUGH': 131, 'pins': 132},
    {'AND': 133},
    {'COMMA': -147, 'RBRACE': -147, '_NL': -147},
    {'CODE': 63, 'COMMA': -155, 'COMMA_NUMBER': 64, 'LBRACE': 134, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'RBRACE': -155, '_NL': -155, 'atom': 69, 'block': 135, 'expr': 136, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'ABOVE': 137, 'AT': 138, 'BELOW': 139, 'CODE': 63, 'COMMA': -193, 'COMMA_NUMBER': 64, 'FROM': 140, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'OF': 141, 'RBRACE': -193, 'WITHIN': 142, '_NL': -193, '__expect_star_8': 143, 'atom': 69, 'clause': 144, 'expr': 145, 'is': 146, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'AND': 147, 'COMMA': -196, 'RBRACE': -196, '_NL': -196, '__omit_star_7': 148},
    {'COMMA': -217, 'FROM': 149, 'RBRACE': -217, '_NL': -217},
    {'COMMA': -218, 'RBRACE': -218, '_NL': -218},
    {'CODE': 63, 'COMMA': -263, 'COMMA_NUMBER': 64, 'LBRACE': 134, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'RBRACE': -263, '_NL': -263, 'atom': 69, 'block': 150, 'expr': 151, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'NAME': 152},
    {'AND': 153, 'LBRACE': 126, '__leg_star_2': 154, 'body': 155},
    {'EQUAL': 156},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'atom': 69, 'expr': 157, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'LPAR': 18, 'NAME': 19, 'PAD': 22, 'chain': 158, 'group': 42, 'path': 52, 'station': 92},
    {'RPAR': 159, 'VBAR': 160, '_NL': 161, '__group_star_4': 162},
    {'ARROW': 106, 'RPAR': -128, 'VBAR': -128, '_NL': -128, '__walk_star_3': 163},
    {'NAME': 164},
    {'ABOVE': -264, 'AND': -264, 'ARROW': -264, 'AT': -264, 'BECAUSE': -264, 'BELOW': -264, 'CODE': -264, 'COMMA': -264, 'COMMA_NUMBER': -264, 'DOT': 165, 'EQUAL': -264, 'FROM': -264, 'IN': -264, 'LBRACE': -264, 'LPAR': -264, 'MINUS': -264, 'NAME': -264, 'NUMBER': -264, 'OFF_BOARD': -264, 'PLUS': -264, 'RBRACE': -264, 'RPAR': -264, 'TO': -264, 'VBAR': -264, 'WITHIN': -264, '_NL': -264},
    {'LPAR': 166},
    {'AND': 147, 'COMMA': -256, 'RBRACE': -256, '_NL': -256, '__omit_star_7': 167},
    {'LBRACE': 126, 'STRING': 168, 'body': 169},
    {'COMMA': -297, 'RBRACE': -297, '_NL': -297},
    {'EQUAL': 170},
    {'COMMA': -325, 'RBRACE': -325, '_NL': -325},
    {'AS': 171},
    {'LBRACE': 126, 'STRING': 172, 'body': 173},
    {'$END': -311, 'ALLOW': 1, 'AMPLIFIER': 2, 'BOARD': 3, 'CHOICE': 4, 'CONNECTOR': 5, 'COUPLING': 6, 'DESIGN': 7, 'DRIVER': 8, 'EXPECT': 9, 'FIT': 10, 'INCLUDE': 11, 'INPUT': 12, 'KIND': 13, 'LAYOUT': 14, 'LEG': 15, 'LET': 16, 'LIMIT': 17, 'LPAR': 18, 'NAME': 19, 'NETWORK': 20, 'OMIT': 21, 'PAD': 22, 'POSITION': 23, 'POSTS': 24, 'SET': 25, 'TESTPOINT': 26, 'USE': 27, 'VARIANT': 28, 'allow': 31, 'amplifier': 32, 'board': 33, 'choice': 34, 'connector': 35, 'coupling': 36, 'design': 37, 'driver': 38, 'entry': 104, 'expect': 40, 'fit': 41, 'group': 42, 'include': 43, 'input': 44, 'layout': 45, 'leg': 46, 'let': 47, 'limit': 48, 'network': 49, 'omit': 50, 'part': 51, 'path': 52, 'position': 53, 'posts': 54, 'set': 55, 'station': 57, 'testpoint': 58, 'use': 59, 'variant': 60, 'walk': 61},
    {'_NL': 174},
    {'$END': -39, 'ALLOW': -39, 'AMPLIFIER': -39, 'BOARD': -39, 'CHOICE': -39, 'CONNECTOR': -39, 'COUPLING': -39, 'DESIGN': -39, 'DRIVER': -39, 'EXPECT': -39, 'FIT': -39, 'INCLUDE': -39, 'INPUT': -39, 'KIND': -39, 'LAYOUT': -39, 'LEG': -39, 'LET': -39, 'LIMIT': -39, 'LPAR': -39, 'NAME': -39, 'NETWORK': -39, 'OMIT': -39, 'PAD': -39, 'POSITION': -39, 'POSTS': -39, 'SET': -39, 'TESTPOINT': -39, 'USE': -39, 'VARIANT': -39},
    {'LPAR': 18, 'NAME': 19, 'PAD': 22, 'group': 42, 'path': 52, 'station': 175},
    {'ARROW': 176, 'COMMA': -338, 'RBRACE': -338, '_NL': -338},
    {'STRING': 177},
    {'NAME': 19, 'path': 178, 'together': 179},
    {'NAME': 19, 'path': 180},
    {'BECAUSE': 181},
    {'ABOVE': -86, 'AT': -86, 'BELOW': -86, 'CIRCUMFLEX': -86, 'COMMA': -86, 'FROM': -86, 'INTO': -86, 'LBRACE': -86, 'MINUS': -86, 'ON': -86, 'PLUS': -86, 'RBRACE': -86, 'RPAR': -86, 'SLASH': -86, 'STAR': -86, 'TO': -86, 'WITHIN': -86, '_NL': -86},
    {'ABOVE': -87, 'AT': -87, 'BELOW': -87, 'CIRCUMFLEX': -87, 'COMMA': -87, 'FROM': -87, 'INTO': -87, 'LBRACE': -87, 'MINUS': -87, 'ON': -87, 'PLUS': -87, 'RBRACE': -87, 'RPAR': -87, 'SLASH': -87, 'STAR': -87, 'TO': -87, 'WITHIN': -87, '_NL': -87},
    {'RPAR': 182},
    {'ABOVE': -333, 'AT': -333, 'BELOW': -333, 'CIRCUMFLEX': -333, 'COMMA': -333, 'FROM': -333, 'INTO': -333, 'LBRACE': -333, 'MINUS': -333, 'ON': -333, 'PLUS': -333, 'RBRACE': -333, 'RPAR': -333, 'SLASH': -333, 'STAR': -333, 'TO': -333, 'WITHIN': -333, '_NL': -333},
    {'ABOVE': -83, 'AT': -83, 'BELOW': -83, 'CIRCUMFLEX': -83, 'COMMA': -83, 'FROM': -83, 'INTO': -83, 'LBRACE': -83, 'MINUS': -83, 'ON': -83, 'PLUS': -83, 'RBRACE': -83, 'RPAR': -83, 'SLASH': -83, 'STAR': -83, 'TO': -83, 'WITHIN': -83, '_NL': -83},
    {'ABOVE': -84, 'AT': -84, 'BELOW': -84, 'CIRCUMFLEX': -84, 'COMMA': -84, 'FROM': -84, 'INTO': -84, 'LBRACE': -84, 'MINUS': -84, 'ON': -84, 'PLUS': -84, 'RBRACE': -84, 'RPAR': -84, 'SLASH': -84, 'STAR': -84, 'TO': -84, 'WITHIN': -84, '_NL': -84},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'atom': 69, 'expr': 183, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'atom': 69, 'power': 184, 'unary': 74},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'atom': 69, 'power': 185, 'unary': 74},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'atom': 69, 'power': 71, 'product': 186, 'unary': 74},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'atom': 69, 'power': 71, 'product': 187, 'unary': 74},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'atom': 69, 'power': 188, 'unary': 74},
    {'AREA': 189, 'COPPER': 190, 'CORNER': 191, 'FIXING': 192, 'HOLE': 193, 'HOLES': 194, 'OUTLINE': 195, 'RBRACE': 196, 'SEEN': 197, 'TAG': 198, 'TAGS': 199, 'THICKNESS': 200, 'TRACK': 201, '_NL': 202, '__board_star_11': 203, '_board_line': 204, 'area': 205, 'copper': 206, 'corner': 207, 'fixing': 208, 'hole': 209, 'holes': 210, 'outline': 211, 'seen': 212, 'tag': 213, 'tags': 214, 'thickness': 215, 'track': 216},
    {'LBRACE': 217},
    {'ALLOW': 1, 'AMPLIFIER': 2, 'BOARD': 3, 'CHOICE': 4, 'CONNECTOR': 5, 'COUPLING': 6, 'DESIGN': 7, 'DRIVER': 8, 'EXPECT': 9, 'FIT': 10, 'INCLUDE': 11, 'INPUT': 12, 'KIND': 13, 'LAYOUT': 14, 'LEG': 15, 'LET': 16, 'LIMIT': 17, 'LPAR': 18, 'NAME': 19, 'NETWORK': 20, 'OMIT': 21, 'PAD': 22, 'POSITION': 23, 'POSTS': 24, 'RBRACE': 218, 'SET': 25, 'TESTPOINT': 26, 'USE': 27, 'VARIANT': 28, '_NL': 219, '__body_star_16': 220, 'allow': 31, 'amplifier': 32, 'board': 33, 'choice': 34, 'connector': 35, 'coupling': 36, 'design': 37, 'driver': 38, 'entry': 221, 'expect': 40, 'fit': 41, 'group': 42, 'include': 43, 'input': 44, 'layout': 45, 'leg': 46, 'let': 47, 'limit': 48, 'network': 49, 'omit': 50, 'part': 51, 'path': 52, 'position': 53, 'posts': 54, 'set': 55, 'station': 57, 'testpoint': 58, 'use': 59, 'variant': 60, 'walk': 61},
    {'LBRACE': 126, 'body': 222},
    {'COMMA': -130, 'RBRACE': -130, '_NL': -130},
    {'NAME': 223, 'PIN': 224, 'RBRACE': 225, '_NL': 226, '__pins_star_1': 227, 'pin': 228},
    {'LBRACE': 129, 'THROUGH': 229, 'pins': 230},
    {'NAME': 231},
    {'COMMA': -138, 'RBRACE': -138, '_NL': -138},
    {'NAME': 19, 'path': 232},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 233, 'NUMBER': 68, 'RBRACE': 234, '_NL': 235, '__block_star_17': 236, 'atom': 69, 'expr': 237, 'item': 238, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'COMMA': -154, 'RBRACE': -154, '_NL': -154},
    {'COMMA': -153, 'LBRACE': 134, 'RBRACE': -153, '_NL': -153, 'block': 239},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'atom': 69, 'expr': 240, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'atom': 69, 'expr': 241, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'atom': 69, 'expr': 242, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'atom': 69, 'expr': 243, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'NAME': 19, 'path': 244},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'atom': 69, 'expr': 245, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'ABOVE': 137, 'AT': 138, 'BELOW': 139, 'COMMA': -192, 'FROM': 140, 'RBRACE': -192, 'WITHIN': 142, '_NL': -192, 'clause': 246},
    {'ABOVE': -9, 'AT': -9, 'BELOW': -9, 'COMMA': -9, 'FROM': -9, 'RBRACE': -9, 'WITHIN': -9, '_NL': -9},
    {'ABOVE': -219, 'AT': -219, 'BELOW': -219, 'COMMA': -219, 'FROM': -219, 'RBRACE': -219, 'WITHIN': -219, '_NL': -219},
    {'ABOVE': 137, 'AT': 138, 'BELOW': 139, 'COMMA': -191, 'FROM': 140, 'RBRACE': -191, 'WITHIN': 142, '_NL': -191, '__expect_star_8': 247, 'clause': 144},
    {'NAME': 19, 'path': 248},
    {'AND': 249, 'COMMA': -195, 'RBRACE': -195, '_NL': -195},
    {'LIBRARY': 250},
    {'COMMA': -262, 'RBRACE': -262, '_NL': -262},
    {'COMMA': -261, 'LBRACE': 134, 'RBRACE': -261, '_NL': -261, 'block': 251},
    {'AS': 252, 'LBRACE': 253},
    {'NAME': 254},
    {'AND': 255, 'LBRACE': 126, 'body': 256},
    {'COMMA': -247, 'RBRACE': -247, '_NL': -247},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'atom': 69, 'expr': 257, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'COMMA': -249, 'RBRACE': -249, '_NL': -249},
    {'RPAR': 258, 'VBAR': 160, '_NL': 259, '__group_star_4': 260},
    {'ARROW': -208, 'COMMA': -208, 'RBRACE': -208, 'RPAR': -208, 'VBAR': -208, '_NL': -208},
    {'LPAR': 18, 'NAME': 19, 'PAD': 22, '_NL': 261, 'chain': 262, 'group': 42, 'path': 52, 'station': 92},
    {'RPAR': 263, 'VBAR': 264},
    {'RPAR': 265, 'VBAR': 266, '_NL': 267},
    {'ARROW': 176, 'RPAR': -127, 'VBAR': -127, '_NL': -127},
    {'ABOVE': -33, 'AND': -33, 'ARROW': -33, 'AT': -33, 'BECAUSE': -33, 'BELOW': -33, 'CODE': -33, 'COMMA': -33, 'COMMA_NUMBER': -33, 'DOT': -33, 'EQUAL': -33, 'FROM': -33, 'IN': -33, 'LBRACE': -33, 'LPAR': -33, 'MINUS': -33, 'NAME': -33, 'NUMBER': -33, 'OFF_BOARD': -33, 'PLUS': -33, 'RBRACE': -33, 'RPAR': -33, 'TO': -33, 'VBAR': -33, 'WITHIN': -33, '_NL': -33},
    {'NAME': 268},
    {'NAME': 269},
    {'AND': 249, 'COMMA': -255, 'RBRACE': -255, '_NL': -255},
    {'LBRACE': 126, 'body': 270},
    {'COMMA': -296, 'RBRACE': -296, '_NL': -296},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'atom': 69, 'expr': 271, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'NAME': 272},
    {'LBRACE': 126, 'body': 273},
    {'COMMA': -337, 'RBRACE': -337, '_NL': -337},
    {'$END': -40, 'ALLOW': -40, 'AMPLIFIER': -40, 'BOARD': -40, 'CHOICE': -40, 'CONNECTOR': -40, 'COUPLING': -40, 'DESIGN': -40, 'DRIVER': -40, 'EXPECT': -40, 'FIT': -40, 'INCLUDE': -40, 'INPUT': -40, 'KIND': -40, 'LAYOUT': -40, 'LEG': -40, 'LET': -40, 'LIMIT': -40, 'LPAR': -40, 'NAME': -40, 'NETWORK': -40, 'OMIT': -40, 'PAD': -40, 'POSITION': -40, 'POSTS': -40, 'SET': -40, 'TESTPOINT': -40, 'USE': -40, 'VARIANT': -40},
    {'ARROW': -43, 'COMMA': -43, 'RBRACE': -43, 'RPAR': -43, 'VBAR': -43, '_NL': -43},
    {'LPAR': 18, 'NAME': 19, 'PAD': 22, 'group': 42, 'path': 52, 'station': 274},
    {'COMMA': -79, 'RBRACE': -79, '_NL': -79},
    {'AND': -329, 'BECAUSE': -329, 'PLUS': 275, '__together_star_10': 276},
    {'AND': 277, 'BECAUSE': -215, '__in_variants_star_9': 278},
    {'BECAUSE': 279, 'IN': 109, 'in_variants': 280},
    {'STRING': 281},
    {'ABOVE': -91, 'AT': -91, 'BELOW': -91, 'CIRCUMFLEX': -91, 'COMMA': -91, 'FROM': -91, 'INTO': -91, 'LBRACE': -91, 'MINUS': -91, 'ON': -91, 'PLUS': -91, 'RBRACE': -91, 'RPAR': -91, 'SLASH': -91, 'STAR': -91, 'TO': -91, 'WITHIN': -91, '_NL': -91},
    {'COMMA': -81, 'LBRACE': 134, 'RBRACE': -81, '_NL': -81, 'block': 282},
    {'ABOVE': -302, 'AT': -302, 'BELOW': -302, 'COMMA': -302, 'FROM': -302, 'INTO': -302, 'LBRACE': -302, 'MINUS': -302, 'ON': -302, 'PLUS': -302, 'RBRACE': -302, 'RPAR': -302, 'SLASH': -302, 'STAR': -302, 'TO': -302, 'WITHIN': -302, '_NL': -302},
    {'ABOVE': -301, 'AT': -301, 'BELOW': -301, 'COMMA': -301, 'FROM': -301, 'INTO': -301, 'LBRACE': -301, 'MINUS': -301, 'ON': -301, 'PLUS': -301, 'RBRACE': -301, 'RPAR': -301, 'SLASH': -301, 'STAR': -301, 'TO': -301, 'WITHIN': -301, '_NL': -301},
    {'ABOVE': -320, 'AT': -320, 'BELOW': -320, 'COMMA': -320, 'FROM': -320, 'INTO': -320, 'LBRACE': -320, 'MINUS': -320, 'ON': -320, 'PLUS': -320, 'RBRACE': -320, 'RPAR': -320, 'SLASH': 119, 'STAR': 120, 'TO': -320, 'WITHIN': -320, '_NL': -320},
    {'ABOVE': -319, 'AT': -319, 'BELOW': -319, 'COMMA': -319, 'FROM': -319, 'INTO': -319, 'LBRACE': -319, 'MINUS': -319, 'ON': -319, 'PLUS': -319, 'RBRACE': -319, 'RPAR': -319, 'SLASH': 119, 'STAR': 120, 'TO': -319, 'WITHIN': -319, '_NL': -319},
    {'ABOVE': -299, 'AT': -299, 'BELOW': -299, 'COMMA': -299, 'FROM': -299, 'INTO': -299, 'LBRACE': -299, 'MINUS': -299, 'ON': -299, 'PLUS': -299, 'RBRACE': -299, 'RPAR': -299, 'SLASH': -299, 'STAR': -299, 'TO': -299, 'WITHIN': -299, '_NL': -299},
    {'NAME': 283},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'ON': 284, 'atom': 69, 'expr': 285, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'POINT': 286, 'point': 287},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'atom': 69, 'expr': 288, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'NAME': 289},
    {'NAME': 290},
    {'POINT': 286, 'point': 291},
    {'COMMA': -116, 'RBRACE': -116, '_NL': -116},
    {'FROM': 292},
    {'NAME': 293},
    {'NAME': 294},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'atom': 69, 'expr': 295, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'atom': 69, 'expr': 296, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'AREA': 189, 'COPPER': 190, 'CORNER': 191, 'FIXING': 192, 'HOLE': 193, 'HOLES': 194, 'OUTLINE': 195, 'RBRACE': 297, 'SEEN': 197, 'TAG': 198, 'TAGS': 199, 'THICKNESS': 200, 'TRACK': 201, '__board_star_11': 298, '_board_line': 299, 'area': 205, 'copper': 206, 'corner': 207, 'fixing': 208, 'hole': 209, 'holes': 210, 'outline': 211, 'seen': 212, 'tag': 213, 'tags': 214, 'thickness': 215, 'track': 216},
    {'AREA': 189, 'COPPER': 190, 'CORNER': 191, 'FIXING': 192, 'HOLE': 193, 'HOLES': 194, 'OUTLINE': 195, 'RBRACE': 300, 'SEEN': 197, 'TAG': 198, 'TAGS': 199, 'THICKNESS': 200, 'TRACK': 201, '_board_line': 301, 'area': 205, 'copper': 206, 'corner': 207, 'fixing': 208, 'hole': 209, 'holes': 210, 'outline': 211, 'seen': 212, 'tag': 213, 'tags': 214, 'thickness': 215, 'track': 216},
    {'COMMA': 302, 'RBRACE': 303, '_NL': 304, '_sep': 305},
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
    {'AREA': 189, 'COPPER': 190, 'CORNER': 191, 'FIXING': 192, 'HOLE': 193, 'HOLES': 194, 'OUTLINE': 195, 'RBRACE': 306, 'SEEN': 197, 'TAG': 198, 'TAGS': 199, 'THICKNESS': 200, 'TRACK': 201, '_NL': 307, '__board_star_11': 308, '_board_line': 309, 'area': 205, 'copper': 206, 'corner': 207, 'fixing': 208, 'hole': 209, 'holes': 210, 'outline': 211, 'seen': 212, 'tag': 213, 'tags': 214, 'thickness': 215, 'track': 216},
    {'COMMA': -124, 'RBRACE': -124, '_NL': -124},
    {'ALLOW': 1, 'AMPLIFIER': 2, 'BOARD': 3, 'CHOICE': 4, 'CONNECTOR': 5, 'COUPLING': 6, 'DESIGN': 7, 'DRIVER': 8, 'EXPECT': 9, 'FIT': 10, 'INCLUDE': 11, 'INPUT': 12, 'KIND': 13, 'LAYOUT': 14, 'LEG': 15, 'LET': 16, 'LIMIT': 17, 'LPAR': 18, 'NAME': 19, 'NETWORK': 20, 'OMIT': 21, 'PAD': 22, 'POSITION': 23, 'POSTS': 24, 'RBRACE': 310, 'SET': 25, 'TESTPOINT': 26, 'USE': 27, 'VARIANT': 28, '__body_star_16': 311, 'allow': 31, 'amplifier': 32, 'board': 33, 'choice': 34, 'connector': 35, 'coupling': 36, 'design': 37, 'driver': 38, 'entry': 312, 'expect': 40, 'fit': 41, 'group': 42, 'include': 43, 'input': 44, 'layout': 45, 'leg': 46, 'let': 47, 'limit': 48, 'network': 49, 'omit': 50, 'part': 51, 'path': 52, 'position': 53, 'posts': 54, 'set': 55, 'station': 57, 'testpoint': 58, 'use': 59, 'variant': 60, 'walk': 61},
    {'ALLOW': 1, 'AMPLIFIER': 2, 'BOARD': 3, 'CHOICE': 4, 'CONNECTOR': 5, 'COUPLING': 6, 'DESIGN': 7, 'DRIVER': 8, 'EXPECT': 9, 'FIT': 10, 'INCLUDE': 11, 'INPUT': 12, 'KIND': 13, 'LAYOUT': 14, 'LEG': 15, 'LET': 16, 'LIMIT': 17, 'LPAR': 18, 'NAME': 19, 'NETWORK': 20, 'OMIT': 21, 'PAD': 22, 'POSITION': 23, 'POSTS': 24, 'RBRACE': 313, 'SET': 25, 'TESTPOINT': 26, 'USE': 27, 'VARIANT': 28, 'allow': 31, 'amplifier': 32, 'board': 33, 'choice': 34, 'connector': 35, 'coupling': 36, 'design': 37, 'driver': 38, 'entry': 314, 'expect': 40, 'fit': 41, 'group': 42, 'include': 43, 'input': 44, 'layout': 45, 'leg': 46, 'let': 47, 'limit': 48, 'network': 49, 'omit': 50, 'part': 51, 'path': 52, 'position': 53, 'posts': 54, 'set': 55, 'station': 57, 'testpoint': 58, 'use': 59, 'variant': 60, 'walk': 61},
    {'COMMA': 302, 'RBRACE': 315, '_NL': 304, '_sep': 316},
    {'COMMA': -129, 'RBRACE': -129, '_NL': -129},
    {'PAD': 317, 'UNUSED': 318},
    {'PAD': 319, 'UNUSED': 320},
    {'COMMA': -277, 'RBRACE': -277, '_NL': -277},
    {'NAME': 223, 'PIN': 224, 'RBRACE': 321, '__pins_star_1': 322, 'pin': 323},
    {'NAME': 223, 'PIN': 224, 'RBRACE': 324, 'pin': 325},
    {'COMMA': 326, 'RBRACE': 327, '_NL': 328, '_pin_sep': 329},
    {'NAME': 330},
    {'COMMA': -136, 'RBRACE': -136, '_NL': -136},
    {'COMMA': -139, 'RBRACE': -139, '_NL': -139},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'atom': 69, 'expr': 331, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'CIRCUMFLEX': -90, 'CODE': 63, 'COMMA': -90, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'PLUS': -90, 'RBRACE': -90, 'SLASH': -90, 'STAR': -90, 'STRING': 332, '_NL': -90, 'atom': 69, 'expr': 333, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'COMMA': -100, 'RBRACE': -100, '_NL': -100},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 233, 'NUMBER': 68, 'RBRACE': 334, '__block_star_17': 335, 'atom': 69, 'expr': 237, 'item': 336, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 233, 'NUMBER': 68, 'RBRACE': 337, 'atom': 69, 'expr': 237, 'item': 338, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'COMMA': -220, 'RBRACE': -220, '_NL': -220},
    {'COMMA': 302, 'RBRACE': 339, '_NL': 304, '_sep': 340},
    {'COMMA': -152, 'RBRACE': -152, '_NL': -152},
    {'ABOVE': -133, 'AT': -133, 'BELOW': -133, 'COMMA': -133, 'FROM': -133, 'RBRACE': -133, 'WITHIN': -133, '_NL': -133},
    {'ABOVE': -131, 'AT': -131, 'BELOW': -131, 'COMMA': -131, 'FROM': -131, 'RBRACE': -131, 'WITHIN': -131, '_NL': -131},
    {'ABOVE': -134, 'AT': -134, 'BELOW': -134, 'COMMA': -134, 'FROM': -134, 'RBRACE': -134, 'WITHIN': -134, '_NL': -134},
    {'TO': 341},
    {'ABOVE': 137, 'AND': 147, 'AT': 138, 'BELOW': 139, 'CODE': 63, 'COMMA': -189, 'COMMA_NUMBER': 64, 'FROM': 140, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'RBRACE': -189, 'WITHIN': 142, '_NL': -189, '__expect_star_8': 342, '__omit_star_7': 343, 'atom': 69, 'clause': 144, 'expr': 145, 'is': 344, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'ABOVE': -132, 'AT': -132, 'BELOW': -132, 'COMMA': -132, 'FROM': -132, 'RBRACE': -132, 'WITHIN': -132, '_NL': -132},
    {'ABOVE': -10, 'AT': -10, 'BELOW': -10, 'COMMA': -10, 'FROM': -10, 'RBRACE': -10, 'WITHIN': -10, '_NL': -10},
    {'ABOVE': 137, 'AT': 138, 'BELOW': 139, 'COMMA': -190, 'FROM': 140, 'RBRACE': -190, 'WITHIN': 142, '_NL': -190, 'clause': 246},
    {'ABOVE': -31, 'AND': -31, 'AT': -31, 'BELOW': -31, 'CODE': -31, 'COMMA': -31, 'COMMA_NUMBER': -31, 'FROM': -31, 'LPAR': -31, 'MINUS': -31, 'NAME': -31, 'NUMBER': -31, 'RBRACE': -31, 'WITHIN': -31, '_NL': -31},
    {'NAME': 19, 'path': 345},
    {'COMMA': -216, 'RBRACE': -216, '_NL': -216},
    {'COMMA': -260, 'RBRACE': -260, '_NL': -260},
    {'NAME': 346},
    {'BUS': 347, 'CUT': 348, 'DEPTH': 349, 'DRILL': 350, 'JUMPER': 351, 'LEAD': 352, 'PLACE': 353, 'RBRACE': 354, '_NL': 355, '__layout_star_13': 356, '_layout_line': 357, 'bus': 358, 'cut': 359, 'depth': 360, 'drill': 361, 'jumper': 362, 'lead_out': 363, 'place': 364},
    {'AND': -27, 'LBRACE': -27},
    {'NAME': 365},
    {'COMMA': -246, 'RBRACE': -246, '_NL': -246},
    {'COMMA': -248, 'RBRACE': -248, '_NL': -248},
    {'ARROW': -204, 'COMMA': -204, 'RBRACE': -204, 'RPAR': -204, 'VBAR': -204, '_NL': -204},
    {'RPAR': 366, 'VBAR': 264},
    {'RPAR': 367, 'VBAR': 266, '_NL': 368},
    {'LPAR': 18, 'NAME': 19, 'PAD': 22, 'chain': 369, 'group': 42, 'path': 52, 'station': 92},
    {'RPAR': -16, 'VBAR': -16, '_NL': -16},
    {'ARROW': -207, 'COMMA': -207, 'RBRACE': -207, 'RPAR': -207, 'VBAR': -207, '_NL': -207},
    {'LPAR': 18, 'NAME': 19, 'PAD': 22, '_NL': 370, 'chain': 371, 'group': 42, 'path': 52, 'station': 92},
    {'ARROW': -206, 'COMMA': -206, 'RBRACE': -206, 'RPAR': -206, 'VBAR': -206, '_NL': -206},
    {'LPAR': 18, 'NAME': 19, 'PAD': 22, '_NL': 372, 'chain': 373, 'group': 42, 'path': 52, 'station': 92},
    {'RPAR': 374, 'VBAR': 375},
    {'ABOVE': -34, 'AND': -34, 'ARROW': -34, 'AT': -34, 'BECAUSE': -34, 'BELOW': -34, 'CODE': -34, 'COMMA': -34, 'COMMA_NUMBER': -34, 'DOT': -34, 'EQUAL': -34, 'FROM': -34, 'IN': -34, 'LBRACE': -34, 'LPAR': -34, 'MINUS': -34, 'NAME': -34, 'NUMBER': -34, 'OFF_BOARD': -34, 'PLUS': -34, 'RBRACE': -34, 'RPAR': -34, 'TO': -34, 'VBAR': -34, 'WITHIN': -34, '_NL': -34},
    {'COMMA': 376, 'RPAR': 377, '__network_star_5': 378},
    {'COMMA': -295, 'RBRACE': -295, '_NL': -295},
    {'COMMA': -305, 'RBRACE': -305, '_NL': -305},
    {'COMMA': -335, 'LBRACE': 134, 'RBRACE': -335, '_NL': -335, 'block': 379},
    {'COMMA': -336, 'RBRACE': -336, '_NL': -336},
    {'ARROW': -44, 'COMMA': -44, 'RBRACE': -44, 'RPAR': -44, 'VBAR': -44, '_NL': -44},
    {'NAME': 19, 'path': 380},
    {'AND': -328, 'BECAUSE': -328, 'PLUS': 381},
    {'NAME': 19, 'path': 178, 'together': 382},
    {'AND': 383, 'BECAUSE': -214},
    {'STRING': 384},
    {'BECAUSE': 385},
    {'COMMA': -78, 'RBRACE': -78, '_NL': -78},
    {'COMMA': -80, 'RBRACE': -80, '_NL': -80},
    {'FROM': 386},
    {'PARTS': 387, 'SOLDER': 388, 'side': 389},
    {'ON': 390},
    {'NAME': 391},
    {'CUT': 392},
    {'AT': 393},
    {'OF': 394},
    {'NUMBER': 395},
    {'COMMA': -257, 'RBRACE': -257, '_NL': -257},
    {'PARTS': 387, 'SOLDER': 388, 'side': 396},
    {'AT': 397},
    {'NUMBER': 398},
    {'COMMA': -326, 'RBRACE': -326, '_NL': -326},
    {'FROM': 399},
    {'COMMA': -112, 'RBRACE': -112, '_NL': -112},
    {'AREA': 189, 'COPPER': 190, 'CORNER': 191, 'FIXING': 192, 'HOLE': 193, 'HOLES': 194, 'OUTLINE': 195, 'RBRACE': 400, 'SEEN': 197, 'TAG': 198, 'TAGS': 199, 'THICKNESS': 200, 'TRACK': 201, '_board_line': 401, 'area': 205, 'copper': 206, 'corner': 207, 'fixing': 208, 'hole': 209, 'holes': 210, 'outline': 211, 'seen': 212, 'tag': 213, 'tags': 214, 'thickness': 215, 'track': 216},
    {'COMMA': 302, 'RBRACE': 402, '_NL': 304, '_sep': 305},
    {'COMMA': -114, 'RBRACE': -114, '_NL': -114},
    {'COMMA': 302, 'RBRACE': 403, '_NL': 304, '_sep': 404},
    {'ALLOW': -74, 'AMPLIFIER': -74, 'AREA': -74, 'AXIS': -74, 'BOARD': -74, 'BUS': -74, 'CHOICE': -74, 'CODE': -74, 'COMMA_NUMBER': -74, 'CONNECTOR': -74, 'COPPER': -74, 'CORNER': -74, 'COUPLING': -74, 'CUT': -74, 'DEPTH': -74, 'DESIGN': -74, 'DRILL': -74, 'DRIVER': -74, 'EXPECT': -74, 'FIT': -74, 'FIXING': -74, 'HOLE': -74, 'HOLES': -74, 'INCLUDE': -74, 'INPUT': -74, 'JUMPER': -74, 'KIND': -74, 'LAYOUT': -74, 'LEAD': -74, 'LEADS': -74, 'LEG': -74, 'LET': -74, 'LIMIT': -74, 'LPAR': -74, 'MINUS': -74, 'NAME': -74, 'NETWORK': -74, 'NUMBER': -74, 'OMIT': -74, 'OUTLINE': -74, 'PAD': -74, 'PLACE': -74, 'POSITION': -74, 'POSTS': -74, 'RAISED': -74, 'RBRACE': -74, 'SEEN': -74, 'SET': -74, 'TAG': -74, 'TAGS': -74, 'TESTPOINT': -74, 'THICKNESS': -74, 'TIE': -74, 'TRACK': -74, 'USE': -74, 'VARIANT': -74, '_NL': 405},
    {'COMMA': -115, 'RBRACE': -115, '_NL': -115},
    {'ALLOW': -75, 'AMPLIFIER': -75, 'AREA': -75, 'AXIS': -75, 'BOARD': -75, 'BUS': -75, 'CHOICE': -75, 'CODE': -75, 'COMMA_NUMBER': -75, 'CONNECTOR': -75, 'COPPER': -75, 'CORNER': -75, 'COUPLING': -75, 'CUT': -75, 'DEPTH': -75, 'DESIGN': -75, 'DRILL': -75, 'DRIVER': -75, 'EXPECT': -75, 'FIT': -75, 'FIXING': -75, 'HOLE': -75, 'HOLES': -75, 'INCLUDE': -75, 'INPUT': -75, 'JUMPER': -75, 'KIND': -75, 'LAYOUT': -75, 'LEAD': -75, 'LEADS': -75, 'LEG': -75, 'LET': -75, 'LIMIT': -75, 'LPAR': -75, 'MINUS': -75, 'NAME': -75, 'NETWORK': -75, 'NUMBER': -75, 'OMIT': -75, 'OUTLINE': -75, 'PAD': -75, 'PLACE': -75, 'POSITION': -75, 'POSTS': -75, 'RAISED': -75, 'RBRACE': -75, 'SEEN': -75, 'SET': -75, 'TAG': -75, 'TAGS': -75, 'TESTPOINT': -75, 'THICKNESS': -75, 'TIE': -75, 'TRACK': -75, 'USE': -75, 'VARIANT': -75},
    {'AREA': -5, 'COPPER': -5, 'CORNER': -5, 'FIXING': -5, 'HOLE': -5, 'HOLES': -5, 'OUTLINE': -5, 'RBRACE': -5, 'SEEN': -5, 'TAG': -5, 'TAGS': -5, 'THICKNESS': -5, 'TRACK': -5},
    {'COMMA': -108, 'RBRACE': -108, '_NL': -108},
    {'AREA': 189, 'COPPER': 190, 'CORNER': 191, 'FIXING': 192, 'HOLE': 193, 'HOLES': 194, 'OUTLINE': 195, 'RBRACE': 406, 'SEEN': 197, 'TAG': 198, 'TAGS': 199, 'THICKNESS': 200, 'TRACK': 201, '__board_star_11': 407, '_board_line': 408, 'area': 205, 'copper': 206, 'corner': 207, 'fixing': 208, 'hole': 209, 'holes': 210, 'outline': 211, 'seen': 212, 'tag': 213, 'tags': 214, 'thickness': 215, 'track': 216},
    {'AREA': 189, 'COPPER': 190, 'CORNER': 191, 'FIXING': 192, 'HOLE': 193, 'HOLES': 194, 'OUTLINE': 195, 'RBRACE': 409, 'SEEN': 197, 'TAG': 198, 'TAGS': 199, 'THICKNESS': 200, 'TRACK': 201, '_board_line': 410, 'area': 205, 'copper': 206, 'corner': 207, 'fixing': 208, 'hole': 209, 'holes': 210, 'outline': 211, 'seen': 212, 'tag': 213, 'tags': 214, 'thickness': 215, 'track': 216},
    {'COMMA': 302, 'RBRACE': 411, '_NL': 304, '_sep': 305},
    {'COMMA': -120, 'RBRACE': -120, '_NL': -120},
    {'ALLOW': 1, 'AMPLIFIER': 2, 'BOARD': 3, 'CHOICE': 4, 'CONNECTOR': 5, 'COUPLING': 6, 'DESIGN': 7, 'DRIVER': 8, 'EXPECT': 9, 'FIT': 10, 'INCLUDE': 11, 'INPUT': 12, 'KIND': 13, 'LAYOUT': 14, 'LEG': 15, 'LET': 16, 'LIMIT': 17, 'LPAR': 18, 'NAME': 19, 'NETWORK': 20, 'OMIT': 21, 'PAD': 22, 'POSITION': 23, 'POSTS': 24, 'RBRACE': 412, 'SET': 25, 'TESTPOINT': 26, 'USE': 27, 'VARIANT': 28, 'allow': 31, 'amplifier': 32, 'board': 33, 'choice': 34, 'connector': 35, 'coupling': 36, 'design': 37, 'driver': 38, 'entry': 413, 'expect': 40, 'fit': 41, 'group': 42, 'include': 43, 'input': 44, 'layout': 45, 'leg': 46, 'let': 47, 'limit': 48, 'network': 49, 'omit': 50, 'part': 51, 'path': 52, 'position': 53, 'posts': 54, 'set': 55, 'station': 57, 'testpoint': 58, 'use': 59, 'variant': 60, 'walk': 61},
    {'COMMA': 302, 'RBRACE': 414, '_NL': 304, '_sep': 316},
    {'COMMA': -122, 'RBRACE': -122, '_NL': -122},
    {'COMMA': 302, 'RBRACE': 415, '_NL': 304, '_sep': 416},
    {'COMMA': -123, 'RBRACE': -123, '_NL': -123},
    {'ALLOW': -7, 'AMPLIFIER': -7, 'BOARD': -7, 'CHOICE': -7, 'CONNECTOR': -7, 'COUPLING': -7, 'DESIGN': -7, 'DRIVER': -7, 'EXPECT': -7, 'FIT': -7, 'INCLUDE': -7, 'INPUT': -7, 'KIND': -7, 'LAYOUT': -7, 'LEG': -7, 'LET': -7, 'LIMIT': -7, 'LPAR': -7, 'NAME': -7, 'NETWORK': -7, 'OMIT': -7, 'PAD': -7, 'POSITION': -7, 'POSTS': -7, 'RBRACE': -7, 'SET': -7, 'TESTPOINT': -7, 'USE': -7, 'VARIANT': -7},
    {'COMMA': -268, 'RBRACE': -268, '_NL': -268},
    {'COMMA': -269, 'RBRACE': -269, '_NL': -269},
    {'COMMA': -266, 'RBRACE': -266, '_NL': -266},
    {'COMMA': -267, 'RBRACE': -267, '_NL': -267},
    {'COMMA': -273, 'RBRACE': -273, '_NL': -273},
    {'NAME': 223, 'PIN': 224, 'RBRACE': 417, 'pin': 418},
    {'COMMA': 326, 'RBRACE': 419, '_NL': 328, '_pin_sep': 329},
    {'COMMA': -275, 'RBRACE': -275, '_NL': -275},
    {'COMMA': 326, 'RBRACE': 420, '_NL': 328, '_pin_sep': 421},
    {'NAME': -71, 'PIN': -71, 'RBRACE': -71, '_NL': 422},
    {'COMMA': -276, 'RBRACE': -276, '_NL': -276},
    {'NAME': -72, 'PIN': -72, 'RBRACE': -72},
    {'NAME': -35, 'PIN': -35, 'RBRACE': -35},
    {'COMMA': -137, 'RBRACE': -137, '_NL': -137},
    {'COMMA': -143, 'RBRACE': -143, '_NL': -143},
    {'COMMA': -222, 'RBRACE': -222, '_NL': -222},
    {'COMMA': -221, 'RBRACE': -221, '_NL': -221},
    {'COMMA': -96, 'RBRACE': -96, '_NL': -96},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 233, 'NUMBER': 68, 'RBRACE': 423, 'atom': 69, 'expr': 237, 'item': 424, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'COMMA': 302, 'RBRACE': 425, '_NL': 304, '_sep': 340},
    {'COMMA': -98, 'RBRACE': -98, '_NL': -98},
    {'COMMA': 302, 'RBRACE': 426, '_NL': 304, '_sep': 427},
    {'COMMA': -99, 'RBRACE': -99, '_NL': -99},
    {'CODE': -3, 'COMMA_NUMBER': -3, 'LPAR': -3, 'MINUS': -3, 'NAME': -3, 'NUMBER': -3, 'RBRACE': -3},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'atom': 69, 'expr': 428, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'ABOVE': 137, 'AT': 138, 'BELOW': 139, 'COMMA': -188, 'FROM': 140, 'RBRACE': -188, 'WITHIN': 142, '_NL': -188, 'clause': 246},
    {'ABOVE': 137, 'AND': 249, 'AT': 138, 'BELOW': 139, 'CODE': 63, 'COMMA': -185, 'COMMA_NUMBER': 64, 'FROM': 140, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'RBRACE': -185, 'WITHIN': 142, '_NL': -185, '__expect_star_8': 429, 'atom': 69, 'clause': 144, 'expr': 145, 'is': 430, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'ABOVE': 137, 'AT': 138, 'BELOW': 139, 'COMMA': -187, 'FROM': 140, 'RBRACE': -187, 'WITHIN': 142, '_NL': -187, '__expect_star_8': 431, 'clause': 144},
    {'ABOVE': -32, 'AND': -32, 'AT': -32, 'BELOW': -32, 'CODE': -32, 'COMMA': -32, 'COMMA_NUMBER': -32, 'FROM': -32, 'LPAR': -32, 'MINUS': -32, 'NAME': -32, 'NUMBER': -32, 'RBRACE': -32, 'WITHIN': -32, '_NL': -32},
    {'LBRACE': 432},
    {'NAME': 19, 'PAD': 433, 'path': 434, 'spot': 435},
    {'FROM': 436},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'atom': 69, 'expr': 437, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'NAME': 438},
    {'NAME': 19, 'PAD': 433, 'path': 434, 'spot': 439},
    {'OUT': 440},
    {'NAME': 19, 'path': 441},
    {'COMMA': -240, 'RBRACE': -240, '_NL': -240},
    {'BUS': 347, 'CUT': 348, 'DEPTH': 349, 'DRILL': 350, 'JUMPER': 351, 'LEAD': 352, 'PLACE': 353, 'RBRACE': 442, '__layout_star_13': 443, '_layout_line': 444, 'bus': 358, 'cut': 359, 'depth': 360, 'drill': 361, 'jumper': 362, 'lead_out': 363, 'place': 364},
    {'BUS': 347, 'CUT': 348, 'DEPTH': 349, 'DRILL': 350, 'JUMPER': 351, 'LEAD': 352, 'PLACE': 353, 'RBRACE': 445, '_layout_line': 446, 'bus': 358, 'cut': 359, 'depth': 360, 'drill': 361, 'jumper': 362, 'lead_out': 363, 'place': 364},
    {'COMMA': 302, 'RBRACE': 447, '_NL': 304, '_sep': 448},
    {'COMMA': -66, 'RBRACE': -66, '_NL': -66},
    {'COMMA': -63, 'RBRACE': -63, '_NL': -63},
    {'COMMA': -69, 'RBRACE': -69, '_NL': -69},
    {'COMMA': -64, 'RBRACE': -64, '_NL': -64},
    {'COMMA': -65, 'RBRACE': -65, '_NL': -65},
    {'COMMA': -68, 'RBRACE': -68, '_NL': -68},
    {'COMMA': -67, 'RBRACE': -67, '_NL': -67},
    {'AND': -28, 'LBRACE': -28},
    {'ARROW': -203, 'COMMA': -203, 'RBRACE': -203, 'RPAR': -203, 'VBAR': -203, '_NL': -203},
    {'ARROW': -202, 'COMMA': -202, 'RBRACE': -202, 'RPAR': -202, 'VBAR': -202, '_NL': -202},
    {'RPAR': 449, 'VBAR': 375},
    {'RPAR': -15, 'VBAR': -15, '_NL': -15},
    {'LPAR': 18, 'NAME': 19, 'PAD': 22, 'chain': 450, 'group': 42, 'path': 52, 'station': 92},
    {'RPAR': -14, 'VBAR': -14, '_NL': -14},
    {'LPAR': 18, 'NAME': 19, 'PAD': 22, 'chain': 451, 'group': 42, 'path': 52, 'station': 92},
    {'RPAR': -20, 'VBAR': -20, '_NL': -20},
    {'ARROW': -205, 'COMMA': -205, 'RBRACE': -205, 'RPAR': -205, 'VBAR': -205, '_NL': -205},
    {'LPAR': 18, 'NAME': 19, 'PAD': 22, '_NL': 452, 'chain': 453, 'group': 42, 'path': 52, 'station': 92},
    {'NAME': 454},
    {'GIVEN': 455, 'LBRACE': 126, 'body': 456, 'given': 457},
    {'COMMA': 458, 'RPAR': 459},
    {'COMMA': -334, 'RBRACE': -334, '_NL': -334},
    {'AND': -41, 'BECAUSE': -41, 'PLUS': -41},
    {'NAME': 19, 'path': 460},
    {'AND': -21, 'BECAUSE': -21},
    {'NAME': 19, 'path': 178, 'together': 461},
    {'COMMA': -77, 'RBRACE': -77, '_NL': -77},
    {'STRING': 462},
    {'POINT': 286, 'point': 463},
    {'SIDE': 464},
    {'SIDE': 465},
    {'COMMA': -141, 'RBRACE': -141, '_NL': -141},
    {'PARTS': 387, 'SOLDER': 388, 'side': 466},
    {'COMMA': -294, 'CUT': -294, 'IN': -294, 'LBRACE': -294, 'ON': -294, 'RBRACE': -294, 'TO': -294, '_NL': -294},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'atom': 69, 'expr': 467, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'POINT': 286, 'point': 468},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'atom': 69, 'expr': 469, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'OF': 470},
    {'COMMA': -304, 'RBRACE': -304, '_NL': -304},
    {'POINT': 286, 'point': 471},
    {'FROM': 472},
    {'POINT': 286, 'point': 473},
    {'COMMA': -110, 'RBRACE': -110, '_NL': -110},
    {'COMMA': 302, 'RBRACE': 474, '_NL': 304, '_sep': 404},
    {'COMMA': -111, 'RBRACE': -111, '_NL': -111},
    {'COMMA': -113, 'RBRACE': -113, '_NL': -113},
    {'AREA': -6, 'COPPER': -6, 'CORNER': -6, 'FIXING': -6, 'HOLE': -6, 'HOLES': -6, 'OUTLINE': -6, 'RBRACE': -6, 'SEEN': -6, 'TAG': -6, 'TAGS': -6, 'THICKNESS': -6, 'TRACK': -6},
    {'ALLOW': -73, 'AMPLIFIER': -73, 'AREA': -73, 'AXIS': -73, 'BOARD': -73, 'BUS': -73, 'CHOICE': -73, 'CODE': -73, 'COMMA_NUMBER': -73, 'CONNECTOR': -73, 'COPPER': -73, 'CORNER': -73, 'COUPLING': -73, 'CUT': -73, 'DEPTH': -73, 'DESIGN': -73, 'DRILL': -73, 'DRIVER': -73, 'EXPECT': -73, 'FIT': -73, 'FIXING': -73, 'HOLE': -73, 'HOLES': -73, 'INCLUDE': -73, 'INPUT': -73, 'JUMPER': -73, 'KIND': -73, 'LAYOUT': -73, 'LEAD': -73, 'LEADS': -73, 'LEG': -73, 'LET': -73, 'LIMIT': -73, 'LPAR': -73, 'MINUS': -73, 'NAME': -73, 'NETWORK': -73, 'NUMBER': -73, 'OMIT': -73, 'OUTLINE': -73, 'PAD': -73, 'PLACE': -73, 'POSITION': -73, 'POSTS': -73, 'RAISED': -73, 'RBRACE': -73, 'SEEN': -73, 'SET': -73, 'TAG': -73, 'TAGS': -73, 'TESTPOINT': -73, 'THICKNESS': -73, 'TIE': -73, 'TRACK': -73, 'USE': -73, 'VARIANT': -73},
    {'COMMA': -104, 'RBRACE': -104, '_NL': -104},
    {'AREA': 189, 'COPPER': 190, 'CORNER': 191, 'FIXING': 192, 'HOLE': 193, 'HOLES': 194, 'OUTLINE': 195, 'RBRACE': 475, 'SEEN': 197, 'TAG': 198, 'TAGS': 199, 'THICKNESS': 200, 'TRACK': 201, '_board_line': 476, 'area': 205, 'copper': 206, 'corner': 207, 'fixing': 208, 'hole': 209, 'holes': 210, 'outline': 211, 'seen': 212, 'tag': 213, 'tags': 214, 'thickness': 215, 'track': 216},
    {'COMMA': 302, 'RBRACE': 477, '_NL': 304, '_sep': 305},
    {'COMMA': -106, 'RBRACE': -106, '_NL': -106},
    {'COMMA': 302, 'RBRACE': 478, '_NL': 304, '_sep': 404},
    {'COMMA': -107, 'RBRACE': -107, '_NL': -107},
    {'COMMA': -118, 'RBRACE': -118, '_NL': -118},
    {'COMMA': 302, 'RBRACE': 479, '_NL': 304, '_sep': 416},
    {'COMMA': -119, 'RBRACE': -119, '_NL': -119},
    {'COMMA': -121, 'RBRACE': -121, '_NL': -121},
    {'ALLOW': -8, 'AMPLIFIER': -8, 'BOARD': -8, 'CHOICE': -8, 'CONNECTOR': -8, 'COUPLING': -8, 'DESIGN': -8, 'DRIVER': -8, 'EXPECT': -8, 'FIT': -8, 'INCLUDE': -8, 'INPUT': -8, 'KIND': -8, 'LAYOUT': -8, 'LEG': -8, 'LET': -8, 'LIMIT': -8, 'LPAR': -8, 'NAME': -8, 'NETWORK': -8, 'OMIT': -8, 'PAD': -8, 'POSITION': -8, 'POSTS': -8, 'RBRACE': -8, 'SET': -8, 'TESTPOINT': -8, 'USE': -8, 'VARIANT': -8},
    {'COMMA': -271, 'RBRACE': -271, '_NL': -271},
    {'COMMA': 326, 'RBRACE': 480, '_NL': 328, '_pin_sep': 421},
    {'COMMA': -272, 'RBRACE': -272, '_NL': -272},
    {'COMMA': -274, 'RBRACE': -274, '_NL': -274},
    {'NAME': -36, 'PIN': -36, 'RBRACE': -36},
    {'NAME': -70, 'PIN': -70, 'RBRACE': -70},
    {'COMMA': -94, 'RBRACE': -94, '_NL': -94},
    {'COMMA': 302, 'RBRACE': 481, '_NL': 304, '_sep': 427},
    {'COMMA': -95, 'RBRACE': -95, '_NL': -95},
    {'COMMA': -97, 'RBRACE': -97, '_NL': -97},
    {'CODE': -4, 'COMMA_NUMBER': -4, 'LPAR': -4, 'MINUS': -4, 'NAME': -4, 'NUMBER': -4, 'RBRACE': -4},
    {'ABOVE': -135, 'AT': -135, 'BELOW': -135, 'COMMA': -135, 'FROM': -135, 'RBRACE': -135, 'WITHIN': -135, '_NL': -135},
    {'ABOVE': 137, 'AT': 138, 'BELOW': 139, 'COMMA': -184, 'FROM': 140, 'RBRACE': -184, 'WITHIN': 142, '_NL': -184, 'clause': 246},
    {'ABOVE': 137, 'AT': 138, 'BELOW': 139, 'COMMA': -183, 'FROM': 140, 'RBRACE': -183, 'WITHIN': 142, '_NL': -183, '__expect_star_8': 482, 'clause': 144},
    {'ABOVE': 137, 'AT': 138, 'BELOW': 139, 'COMMA': -186, 'FROM': 140, 'RBRACE': -186, 'WITHIN': 142, '_NL': -186, 'clause': 246},
    {'BUS': 347, 'CUT': 348, 'DEPTH': 349, 'DRILL': 350, 'JUMPER': 351, 'LEAD': 352, 'PLACE': 353, 'RBRACE': 483, '_NL': 484, '__layout_star_13': 485, '_layout_line': 486, 'bus': 358, 'cut': 359, 'depth': 360, 'drill': 361, 'jumper': 362, 'lead_out': 363, 'place': 364},
    {'AND': -308, 'ARROW': -308, 'COMMA': -308, 'LBRACE': -308, 'RBRACE': -308, 'TO': -308, '_NL': -308},
    {'AND': -310, 'ARROW': -310, 'COMMA': -310, 'LBRACE': -310, 'NUMBER': 487, 'RBRACE': -310, 'TO': -310, '_NL': -310},
    {'TO': 488},
    {'POINT': 286, 'point': 489},
    {'COMMA': -146, 'RBRACE': -146, '_NL': -146},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'atom': 69, 'expr': 490, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'ARROW': 491},
    {'NAME': 19, 'PAD': 433, 'path': 434, 'spot': 492},
    {'AT': 493, 'OFF_BOARD': 494},
    {'COMMA': -236, 'RBRACE': -236, '_NL': -236},
    {'BUS': 347, 'CUT': 348, 'DEPTH': 349, 'DRILL': 350, 'JUMPER': 351, 'LEAD': 352, 'PLACE': 353, 'RBRACE': 495, '_layout_line': 496, 'bus': 358, 'cut': 359, 'depth': 360, 'drill': 361, 'jumper': 362, 'lead_out': 363, 'place': 364},
    {'COMMA': 302, 'RBRACE': 497, '_NL': 304, '_sep': 448},
    {'COMMA': -238, 'RBRACE': -238, '_NL': -238},
    {'COMMA': 302, 'RBRACE': 498, '_NL': 304, '_sep': 499},
    {'COMMA': -239, 'RBRACE': -239, '_NL': -239},
    {'BUS': -23, 'CUT': -23, 'DEPTH': -23, 'DRILL': -23, 'JUMPER': -23, 'LEAD': -23, 'PLACE': -23, 'RBRACE': -23},
    {'ARROW': -201, 'COMMA': -201, 'RBRACE': -201, 'RPAR': -201, 'VBAR': -201, '_NL': -201},
    {'RPAR': -13, 'VBAR': -13, '_NL': -13},
    {'RPAR': -19, 'VBAR': -19, '_NL': -19},
    {'LPAR': 18, 'NAME': 19, 'PAD': 22, 'chain': 500, 'group': 42, 'path': 52, 'station': 92},
    {'RPAR': -18, 'VBAR': -18, '_NL': -18},
    {'COMMA': -29, 'RPAR': -29},
    {'NAME': 501, 'param': 502},
    {'COMMA': -253, 'RBRACE': -253, '_NL': -253},
    {'LBRACE': 126, 'body': 503},
    {'NAME': 504},
    {'GIVEN': 455, 'LBRACE': 126, 'body': 505, 'given': 506},
    {'AND': -42, 'BECAUSE': -42, 'PLUS': -42},
    {'AND': -22, 'BECAUSE': -22},
    {'COMMA': -76, 'RBRACE': -76, '_NL': -76},
    {'TO': 507, '__area_plus_12': 508},
    {'COMMA': -306, 'LBRACE': -306, 'RBRACE': -306, '_NL': -306},
    {'COMMA': -307, 'LBRACE': -307, 'RBRACE': -307, '_NL': -307},
    {'COMMA': -140, 'RBRACE': -140, '_NL': -140},
    {'COMMA': -142, 'RBRACE': -142, '_NL': -142},
    {'COMMA': -198, 'LBRACE': 134, 'RBRACE': -198, '_NL': -198, 'block': 509},
    {'AT': 510},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'atom': 69, 'expr': 511, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'COMMA': -322, 'LBRACE': 134, 'RBRACE': -322, '_NL': -322, 'block': 512},
    {'POINT': 286, 'point': 513},
    {'TO': 507, '__area_plus_12': 514},
    {'COMMA': -109, 'RBRACE': -109, '_NL': -109},
    {'COMMA': -102, 'RBRACE': -102, '_NL': -102},
    {'COMMA': 302, 'RBRACE': 515, '_NL': 304, '_sep': 404},
    {'COMMA': -103, 'RBRACE': -103, '_NL': -103},
    {'COMMA': -105, 'RBRACE': -105, '_NL': -105},
    {'COMMA': -117, 'RBRACE': -117, '_NL': -117},
    {'COMMA': -270, 'RBRACE': -270, '_NL': -270},
    {'COMMA': -93, 'RBRACE': -93, '_NL': -93},
    {'ABOVE': 137, 'AT': 138, 'BELOW': 139, 'COMMA': -182, 'FROM': 140, 'RBRACE': -182, 'WITHIN': 142, '_NL': -182, 'clause': 246},
    {'COMMA': -232, 'RBRACE': -232, '_NL': -232},
    {'BUS': 347, 'CUT': 348, 'DEPTH': 349, 'DRILL': 350, 'JUMPER': 351, 'LEAD': 352, 'PLACE': 353, 'RBRACE': 516, '__layout_star_13': 517, '_layout_line': 518, 'bus': 358, 'cut': 359, 'depth': 360, 'drill': 361, 'jumper': 362, 'lead_out': 363, 'place': 364},
    {'BUS': 347, 'CUT': 348, 'DEPTH': 349, 'DRILL': 350, 'JUMPER': 351, 'LEAD': 352, 'PLACE': 353, 'RBRACE': 519, '_layout_line': 520, 'bus': 358, 'cut': 359, 'depth': 360, 'drill': 361, 'jumper': 362, 'lead_out': 363, 'place': 364},
    {'COMMA': 302, 'RBRACE': 521, '_NL': 304, '_sep': 448},
    {'AND': -309, 'ARROW': -309, 'COMMA': -309, 'LBRACE': -309, 'RBRACE': -309, 'TO': -309, '_NL': -309},
    {'NAME': 19, 'PAD': 433, 'path': 434, 'spot': 522},
    {'TO': 523},
    {'AT': 524},
    {'NAME': 19, 'PAD': 433, 'path': 434, 'spot': 525},
    {'TO': 526},
    {'POINT': 286, 'point': 527},
    {'COMMA': -281, 'LBRACE': 528, 'ON': 529, 'RBRACE': -281, '_NL': -281, 'placing': 530},
    {'COMMA': -234, 'RBRACE': -234, '_NL': -234},
    {'COMMA': 302, 'RBRACE': 531, '_NL': 304, '_sep': 499},
    {'COMMA': -235, 'RBRACE': -235, '_NL': -235},
    {'COMMA': -237, 'RBRACE': -237, '_NL': -237},
    {'BUS': -24, 'CUT': -24, 'DEPTH': -24, 'DRILL': -24, 'JUMPER': -24, 'LEAD': -24, 'PLACE': -24, 'RBRACE': -24},
    {'RPAR': -17, 'VBAR': -17, '_NL': -17},
    {'COMMA': -259, 'EQUAL': 532, 'LBRACE': -259},
    {'COMMA': 533, 'LBRACE': -200, '__given_star_6': 534},
    {'COMMA': -252, 'RBRACE': -252, '_NL': -252},
    {'COMMA': -30, 'RPAR': -30},
    {'COMMA': -251, 'RBRACE': -251, '_NL': -251},
    {'LBRACE': 126, 'body': 535},
    {'POINT': 286, 'point': 536},
    {'COMMA': -82, 'RBRACE': -82, 'TO': 537, '_NL': -82},
    {'COMMA': -197, 'RBRACE': -197, '_NL': -197},
    {'POINT': 286, 'point': 538},
    {'FROM': 539},
    {'COMMA': -321, 'RBRACE': -321, '_NL': -321},
    {'TO': 540},
    {'COMMA': -331, 'LBRACE': 134, 'RBRACE': -331, 'TO': 537, '_NL': -331, 'block': 541},
    {'COMMA': -101, 'RBRACE': -101, '_NL': -101},
    {'COMMA': -228, 'RBRACE': -228, '_NL': -228},
    {'BUS': 347, 'CUT': 348, 'DEPTH': 349, 'DRILL': 350, 'JUMPER': 351, 'LEAD': 352, 'PLACE': 353, 'RBRACE': 542, '_layout_line': 543, 'bus': 358, 'cut': 359, 'depth': 360, 'drill': 361, 'jumper': 362, 'lead_out': 363, 'place': 364},
    {'COMMA': 302, 'RBRACE': 544, '_NL': 304, '_sep': 448},
    {'COMMA': -230, 'RBRACE': -230, '_NL': -230},
    {'COMMA': 302, 'RBRACE': 545, '_NL': 304, '_sep': 499},
    {'COMMA': -231, 'RBRACE': -231, '_NL': -231},
    {'COMMA': -126, 'LBRACE': 134, 'RBRACE': -126, '_NL': -126, 'block': 546},
    {'POINT': 286, 'point': 547},
    {'POINT': 286, 'point': 548},
    {'COMMA': -224, 'LBRACE': 134, 'RBRACE': -224, '_NL': -224, 'block': 549},
    {'NAME': 19, 'PAD': 433, 'path': 434, 'spot': 550},
    {'COMMA': -285, 'LBRACE': 528, 'ON': 551, 'RBRACE': -285, '_NL': -285, 'placing': 552},
    {'AXIS': 553, 'LEADS': 554, 'NAME': 555, 'RAISED': 556, 'RBRACE': 557, 'TIE': 558, '_NL': 559, '__placing_star_14': 560, '_how': 561, 'axis': 562, 'lead': 563, 'leads': 564, 'note': 565, 'raised': 566, 'tie': 567},
    {'PARTS': 387, 'SOLDER': 388, 'side': 568},
    {'COMMA': -280, 'RBRACE': -280, '_NL': -280},
    {'COMMA': -233, 'RBRACE': -233, '_NL': -233},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'atom': 69, 'expr': 569, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'NAME': 501, 'param': 570},
    {'COMMA': 571, 'LBRACE': -199},
    {'COMMA': -250, 'RBRACE': -250, '_NL': -250},
    {'COMMA': -1, 'LBRACE': -1, 'RBRACE': -1, 'TO': -1, '_NL': -1},
    {'POINT': 286, 'point': 572},
    {'COMMA': -210, 'LBRACE': 134, 'RBRACE': -210, '_NL': -210, 'block': 573},
    {'POINT': 286, 'point': 574},
    {'POINT': 286, 'point': 575},
    {'COMMA': -330, 'RBRACE': -330, '_NL': -330},
    {'COMMA': -226, 'RBRACE': -226, '_NL': -226},
    {'COMMA': 302, 'RBRACE': 576, '_NL': 304, '_sep': 499},
    {'COMMA': -227, 'RBRACE': -227, '_NL': -227},
    {'COMMA': -229, 'RBRACE': -229, '_NL': -229},
    {'COMMA': -125, 'RBRACE': -125, '_NL': -125},
    {'COMMA': -145, 'LBRACE': 134, 'RBRACE': -145, '_NL': -145, 'block': 577},
    {'COMMA': -151, 'IN': 578, 'LBRACE': 134, 'RBRACE': -151, '_NL': -151, 'block': 579, 'in_area': 580},
    {'COMMA': -223, 'RBRACE': -223, '_NL': -223},
    {'COMMA': -243, 'LBRACE': 134, 'RBRACE': -243, '_NL': -243, 'block': 581},
    {'PARTS': 387, 'SOLDER': 388, 'side': 582},
    {'COMMA': -284, 'RBRACE': -284, '_NL': -284},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'atom': 69, 'expr': 583, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'INTO': 584},
    {'INTO': 585, 'STRING': 586},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'atom': 69, 'expr': 587, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'COMMA': -293, 'RBRACE': -293, '_NL': -293},
    {'CODE': 63, 'COMMA_NUMBER': 64, 'LPAR': 65, 'MINUS': 66, 'NAME': 67, 'NUMBER': 68, 'atom': 69, 'expr': 588, 'power': 71, 'product': 72, 'sum': 73, 'unary': 74},
    {'AXIS': 553, 'LEADS': 554, 'NAME': 555, 'RAISED': 556, 'RBRACE': 589, 'TIE': 558, '__placing_star_14': 590, '_how': 591, 'axis': 562, 'lead': 563, 'leads': 564, 'note': 565, 'raised': 566, 'tie': 567},
    {'AXIS': 553, 'LEADS': 554, 'NAME': 555, 'RAISED': 556, 'RBRACE': 592, 'TIE': 558, '_how': 593, 'axis': 562, 'lead': 563, 'leads': 564, 'note': 565, 'raised': 566, 'tie': 567},
    {'COMMA': 302, 'RBRACE': 594, '_NL': 304, '_sep': 595},
    {'COMMA': -57, 'RBRACE': -57, '_NL': -57},
    {'COMMA': -58, 'RBRACE': -58, '_NL': -58},
    {'COMMA': -59, 'RBRACE': -59, '_NL': -59},
    {'COMMA': -62, 'RBRACE': -62, '_NL': -62},
    {'COMMA': -61, 'RBRACE': -61, '_NL': -61},
    {'COMMA': -60, 'RBRACE': -60, '_NL': -60},
    {'COMMA': -279, 'LBRACE': 528, 'RBRACE': -279, '_NL': -279, 'placing': 596},
    {'COMMA': -258, 'LBRACE': -258},
    {'COMMA': -11, 'LBRACE': -11},
    {'NAME': 501, 'param': 597},
    {'COMMA': -2, 'LBRACE': -2, 'RBRACE': -2, 'TO': -2, '_NL': -2},
    {'COMMA': -209, 'RBRACE': -209, '_NL': -209},
    {'TO': 598},
    {'COMMA': -324, 'LBRACE': 134, 'RBRACE': -324, '_NL': -324, 'block': 599},
    {'COMMA': -225, 'RBRACE': -225, '_NL': -225},
    {'COMMA': -144, 'RBRACE': -144, '_NL': -144},
    {'NAME': 600},
    {'COMMA': -150, 'RBRACE': -150, '_NL': -150},
    {'COMMA': -149, 'LBRACE': 134, 'RBRACE': -149, '_NL': -149, 'block': 601},
    {'COMMA': -242, 'RBRACE': -242, '_NL': -242},
    {'COMMA': -283, 'LBRACE': 528, 'RBRACE': -283, '_NL': -283, 'placing': 602},
    {'COMMA': -92, 'RBRACE': -92, '_NL': -92},
    {'NAME': 19, 'PAD': 433, 'path': 434, 'spot': 603},
    {'NAME': 19, 'PAD': 433, 'path': 434, 'spot': 604},
    {'COMMA': -254, 'RBRACE': -254, '_NL': -254},
    {'COMMA': -303, 'RBRACE': -303, '_NL': -303},
    {'FROM': 605},
    {'COMMA': -289, 'RBRACE': -289, '_NL': -289},
    {'AXIS': 553, 'LEADS': 554, 'NAME': 555, 'RAISED': 556, 'RBRACE': 606, 'TIE': 558, '_how': 607, 'axis': 562, 'lead': 563, 'leads': 564, 'note': 565, 'raised': 566, 'tie': 567},
    {'COMMA': 302, 'RBRACE': 608, '_NL': 304, '_sep': 595},
    {'COMMA': -291, 'RBRACE': -291, '_NL': -291},
    {'COMMA': 302, 'RBRACE': 609, '_NL': 304, '_sep': 610},
    {'COMMA': -292, 'RBRACE': -292, '_NL': -292},
    {'AXIS': -37, 'LEADS': -37, 'NAME': -37, 'RAISED': -37, 'RBRACE': -37, 'TIE': -37},
    {'COMMA': -278, 'RBRACE': -278, '_NL': -278},
    {'COMMA': -12, 'LBRACE': -12},
    {'POINT': 286, 'point': 611},
    {'COMMA': -323, 'RBRACE': -323, '_NL': -323},
    {'COMMA': -213, 'LBRACE': -213, 'RBRACE': -213, '_NL': -213},
    {'COMMA': -148, 'RBRACE': -148, '_NL': -148},
    {'COMMA': -282, 'RBRACE': -282, '_NL': -282},
    {'AND': 612, 'COMMA': -245, 'RBRACE': -245, '_NL': -245, '__leads_star_15': 613},
    {'COMMA': -241, 'RBRACE': -241, '_NL': -241},
    {'POINT': 286, 'point': 614},
    {'COMMA': -287, 'RBRACE': -287, '_NL': -287},
    {'COMMA': 302, 'RBRACE': 615, '_NL': 304, '_sep': 610},
    {'COMMA': -288, 'RBRACE': -288, '_NL': -288},
    {'COMMA': -290, 'RBRACE': -290, '_NL': -290},
    {'AXIS': -38, 'LEADS': -38, 'NAME': -38, 'RAISED': -38, 'RBRACE': -38, 'TIE': -38},
    {'COMMA': -212, 'LBRACE': 134, 'RBRACE': -212, '_NL': -212, 'block': 616},
    {'NAME': 19, 'PAD': 433, 'path': 434, 'spot': 617},
    {'AND': 618, 'COMMA': -244, 'RBRACE': -244, '_NL': -244},
    {'TO': 619},
    {'COMMA': -286, 'RBRACE': -286, '_NL': -286},
    {'COMMA': -211, 'RBRACE': -211, '_NL': -211},
    {'AND': -25, 'COMMA': -25, 'RBRACE': -25, '_NL': -25},
    {'NAME': 19, 'PAD': 433, 'path': 434, 'spot': 620},
    {'POINT': 286, 'point': 621},
    {'AND': -26, 'COMMA': -26, 'RBRACE': -26, '_NL': -26},
    {'COMMA': -327, 'RBRACE': -327, '_NL': -327},
)
