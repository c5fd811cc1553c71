"""Every finding there is: plain lists of the modules that hold them, a list for each family. Their order
is of no account.

To add a rule, write its module, import it here, put a line into its family, and run the generator of the reference
pages. A name that has been retired moves to `RETIRED` and is never used again.
"""

from __future__ import annotations

from collections.abc import Mapping
from types import ModuleType

from shuntwise.checks import idle_waivers
from shuntwise.checks.board import (
    board_mirrors_itself,
    bodies_collide,
    body_over_edge,
    copper_hardly_joined,
    hole_in_other_copper,
    laid_out_otherwise,
    lead_misplaced,
    lead_missing,
    lead_off_copper,
    leads_exchanged,
    leads_reversed,
    leads_untold,
    net_not_joined,
    nets_joined,
    nothing_leads_to_pad,
    part_not_placed,
    part_too_high,
    placed_not_used,
)
from shuntwise.checks.documents import driver_assumed, rating_missing, tolerance_missing, variant_unnamed
from shuntwise.checks.drivers import (
    amplifier_load_odd,
    driver_figure_odd,
    driver_model_twice,
    fit_poor,
    measured_band_short,
    measured_malformed,
    measured_not_physical,
    measured_not_read,
    measured_unlike_driver,
)
from shuntwise.checks.intent import (
    attenuator_miswired,
    band_inside_out,
    bare_trap_across_amp,
    bare_tweeter,
    cap_across_amp,
    cap_across_tweeter,
    cap_feeds_woofer,
    coil_across_amp,
    coil_across_woofer,
    coil_feeds_tweeter,
    dc_into_tweeter,
    driver_unfed,
    drivers_misgrouped,
    expectation_unmet,
    feed_unclear,
    lamp_or_fuse_wrong,
    leg_misnamed,
    leg_unfiltered,
    legs_tied,
    link_left_in,
    link_missing,
    pad_ahead_of_filter,
    pad_half_missing,
    pad_reversed,
    pair_opposed,
    polarity_even_order,
    resistor_across_amp,
    resistor_wrong_side,
    returns_joined,
    row_of_equals,
    shunt_before_coil,
    taper_reversed,
    trap_undamped,
    trap_wrong_way,
    turned_unsaid,
    zobel_misplaced,
    zobel_side_by_side,
    zobel_without_r,
)
from shuntwise.checks.language import (
    attribute_twice,
    board_incomplete,
    circular_value,
    conflict_markers,
    decimal_comma,
    driver_model_incomplete,
    expectation_unclear,
    hole_outside_area,
    holes_collide,
    include_loop,
    include_not_read,
    included_twice,
    lead_unclear,
    lone_branch,
    lone_position,
    misplaced_statement,
    needless_key,
    nested_too_deep,
    netlist_given,
    network_loop,
    node_ends_group,
    outside_board,
    pad_on_part,
    pad_sign_missing,
    parameter_missing,
    reason_missing,
    reserved_name,
    return_unclear,
    shape_impossible,
    syntax_error,
    tap_outside_coil,
    too_many_parts,
    too_much_on_board,
    unclosed_brace,
    unit_missing,
    unit_wrong_kind,
    unknown_finding,
    unknown_name,
    unknown_statement,
    unknown_unit,
    unknown_word,
    value_absurd,
    value_missing,
    value_not_positive,
    value_unclear,
    walk_outside_leg,
    walk_too_short,
    walked_twice,
)
from shuntwise.checks.load import (
    hard_angle,
    load_too_low,
    one_part_fails,
    top_end_load,
    two_boxes,
    unplugged_collapse,
)
from shuntwise.checks.ratings import (
    cap_current,
    cap_volts_low,
    cap_volts_unplugged,
    coil_dcr_share,
    coil_saturates,
    coil_wire_hot,
    driver_overdriven,
    electrolytic_series_tweeter,
    excursion_high,
    fuse_opens_in_use,
    fuse_opens_late,
    fuse_volts_low,
    hookup_too_thin,
    lamp_rating,
    parallel_caps_mixed,
    polar_cap,
    resistor_hot,
)
from shuntwise.checks.rule import Rule
from shuntwise.checks.run import NUMBERS
from shuntwise.checks.values import (
    below_lowest_corner,
    coil_facts_disagree,
    corner_gap,
    corner_overlap,
    decimal_slip,
    level_out_of_line,
    loaded_peak,
    no_effect_part,
    off_series,
    pad_load_off,
    slip_explains,
    spread_too_wide,
    tolerance_wide,
    trap_off_tune,
    trap_too_broad,
    tweeter_too_low,
    zobel_off,
)
from shuntwise.checks.wiring import (
    coupling_impossible,
    dead_twig,
    does_nothing,
    double_entry,
    driver_one_lead,
    driver_shorted,
    half_fitted,
    input_on_no_pin,
    input_shorted,
    label_kind_clash,
    legs_crossed,
    look_alike_names,
    loose_node,
    no_driver,
    no_way_back,
    part_not_wired,
    pin_carries_two,
    pin_turned,
    role_missing,
    same_label_twice,
    terminal_unused,
    two_islands,
    winding_shorted,
    wired_across,
)
from shuntwise.model.resolve import Catalogue

LANGUAGE: tuple[ModuleType, ...] = (
    syntax_error,
    unknown_statement,
    conflict_markers,
    netlist_given,
    unclosed_brace,
    nested_too_deep,
    misplaced_statement,
    walk_outside_leg,
    unknown_name,
    unknown_word,
    unknown_finding,
    reason_missing,
    reserved_name,
    pad_sign_missing,
    pad_on_part,
    return_unclear,
    walk_too_short,
    walked_twice,
    node_ends_group,
    lone_branch,
    lone_position,
    unit_missing,
    unit_wrong_kind,
    unknown_unit,
    decimal_comma,
    value_missing,
    value_not_positive,
    value_absurd,
    value_unclear,
    circular_value,
    attribute_twice,
    needless_key,
    driver_model_incomplete,
    tap_outside_coil,
    parameter_missing,
    network_loop,
    too_many_parts,
    include_not_read,
    include_loop,
    included_twice,
    expectation_unclear,
    board_incomplete,
    shape_impossible,
    outside_board,
    hole_outside_area,
    holes_collide,
    too_much_on_board,
    lead_unclear,
    idle_waivers,
)

WIRING: tuple[ModuleType, ...] = (
    no_driver,
    same_label_twice,
    label_kind_clash,
    role_missing,
    coupling_impossible,
    part_not_wired,
    pin_carries_two,
    pin_turned,
    input_on_no_pin,
    loose_node,
    half_fitted,
    driver_one_lead,
    terminal_unused,
    input_shorted,
    driver_shorted,
    wired_across,
    does_nothing,
    winding_shorted,
    two_islands,
    no_way_back,
    dead_twig,
    look_alike_names,
    double_entry,
    legs_crossed,
)

DRIVERS: tuple[ModuleType, ...] = (
    driver_model_twice,
    measured_not_read,
    measured_malformed,
    measured_not_physical,
    measured_unlike_driver,
    measured_band_short,
    fit_poor,
    driver_figure_odd,
    amplifier_load_odd,
)

INTENT: tuple[ModuleType, ...] = (
    leg_misnamed,
    bare_tweeter,
    dc_into_tweeter,
    link_missing,
    link_left_in,
    driver_unfed,
    feed_unclear,
    returns_joined,
    legs_tied,
    pair_opposed,
    drivers_misgrouped,
    coil_across_amp,
    shunt_before_coil,
    cap_across_amp,
    bare_trap_across_amp,
    resistor_across_amp,
    coil_feeds_tweeter,
    cap_feeds_woofer,
    coil_across_woofer,
    cap_across_tweeter,
    leg_unfiltered,
    row_of_equals,
    taper_reversed,
    band_inside_out,
    resistor_wrong_side,
    pad_reversed,
    pad_ahead_of_filter,
    pad_half_missing,
    attenuator_miswired,
    zobel_misplaced,
    zobel_side_by_side,
    zobel_without_r,
    trap_wrong_way,
    trap_undamped,
    lamp_or_fuse_wrong,
    polarity_even_order,
    turned_unsaid,
    expectation_unmet,
)

VALUES: tuple[ModuleType, ...] = (
    slip_explains,
    decimal_slip,
    off_series,
    coil_facts_disagree,
    zobel_off,
    pad_load_off,
    trap_off_tune,
    trap_too_broad,
    tweeter_too_low,
    below_lowest_corner,
    corner_gap,
    corner_overlap,
    level_out_of_line,
    loaded_peak,
    no_effect_part,
    tolerance_wide,
    spread_too_wide,
)

RATINGS: tuple[ModuleType, ...] = (
    polar_cap,
    electrolytic_series_tweeter,
    parallel_caps_mixed,
    coil_dcr_share,
    resistor_hot,
    cap_volts_low,
    cap_volts_unplugged,
    cap_current,
    coil_saturates,
    coil_wire_hot,
    hookup_too_thin,
    driver_overdriven,
    excursion_high,
    lamp_rating,
    fuse_opens_in_use,
    fuse_opens_late,
    fuse_volts_low,
)

LOAD: tuple[ModuleType, ...] = (
    load_too_low,
    two_boxes,
    unplugged_collapse,
    one_part_fails,
    top_end_load,
    hard_angle,
)

BOARD: tuple[ModuleType, ...] = (
    part_not_placed,
    lead_missing,
    leads_untold,
    nothing_leads_to_pad,
    leads_reversed,
    leads_exchanged,
    lead_misplaced,
    lead_off_copper,
    net_not_joined,
    nets_joined,
    copper_hardly_joined,
    hole_in_other_copper,
    board_mirrors_itself,
    bodies_collide,
    body_over_edge,
    part_too_high,
    placed_not_used,
    laid_out_otherwise,
)

DOCUMENTS: tuple[ModuleType, ...] = (rating_missing, tolerance_missing, driver_assumed, variant_unnamed)

FAMILIES: Mapping[str, tuple[ModuleType, ...]] = {
    "language": LANGUAGE,
    "wiring": WIRING,
    "drivers": DRIVERS,
    "intent": INTENT,
    "values": VALUES,
    "ratings": RATINGS,
    "load": LOAD,
    "board": BOARD,
    "documents": DOCUMENTS,
}

MODULES: tuple[ModuleType, ...] = tuple(module for modules in FAMILIES.values() for module in modules)

RETIRED: tuple[str, ...] = ()

RULES: Mapping[str, Rule] = {module.RULE.name: module.RULE for module in MODULES}
PAGES: Mapping[str, ModuleType] = {module.RULE.name: module for module in MODULES}
FAMILY_OF: Mapping[str, str] = {module.RULE.name: family for family, modules in FAMILIES.items() for module in modules}

_UNPLUGGED = (unplugged_collapse, cap_volts_unplugged, one_part_fails)
_FOLLOWS = (*_UNPLUGGED, expectation_unmet)
_DOUBLED = (conflict_markers, include_loop, included_twice)
_RANKS = (
    _DOUBLED,
    (same_label_twice,),
    [module for module in (*LANGUAGE, *WIRING) if module not in (*_DOUBLED, same_label_twice)],
    DRIVERS,
    (slip_explains,),
    [module for module in INTENT if module not in _FOLLOWS],
    [module for module in VALUES if module is not slip_explains],
    [module for module in LOAD if module not in _FOLLOWS],
    [module for module in RATINGS if module not in _FOLLOWS],
    _UNPLUGGED,
    (expectation_unmet,),
    BOARD,
    DOCUMENTS,
)
RANK: Mapping[str, int] = {module.RULE.name: rank for rank, modules in enumerate(_RANKS) for module in modules}
"""How near to the cause a finding is. What doubles whole texts and names that are taken come first, since with them no
other name can be relied on. Form, names, wiring, facts of one part, intent and value come before what follows:
load, heat, what happens with a driver off, what does not come out. What is only missing comes last."""

CAUSES = frozenset(
    module.RULE.name
    for module in (*WIRING, *DRIVERS, *INTENT, *VALUES)
    if module.RULE.needs not in NUMBERS or module.RULE.is_cause
)
"""What is found in the circuit and its parts without solving: what only solving shows follows from something."""

CATALOGUE = Catalogue(
    waivable=tuple(rule.name for rule in RULES.values() if rule.check is not None),
    limits={rule.name: rule.bound.dimension for rule in RULES.values() if rule.bound is not None},
)

AT_KNOB_ENDS = frozenset(module.RULE.name for module in (*RATINGS, *LOAD, expectation_unmet))
"""What matters of an attenuator at an end of its range: heat, load, and what is expected of them."""

OF_WHOLE_DESIGNS = frozenset(("no-driver", "rating-missing", "driver-assumed", "tolerance-missing"))
"""Rules on declarations that ask for what only a whole design has; a file that others include may do without."""
