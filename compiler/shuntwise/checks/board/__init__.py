"""Rules on boards: whether copper, cuts, wires and leads make the circuit."""
