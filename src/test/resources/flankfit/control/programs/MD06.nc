; expect note MD06 3
G54
G0 X5.
M30
