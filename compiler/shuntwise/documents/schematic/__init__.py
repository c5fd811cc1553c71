"""The schematic, drawn from the circuit: `draw.schematic_sheets` gives its sheets."""
