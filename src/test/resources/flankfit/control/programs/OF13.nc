; expect warning OF13 3
G21 G90 G54
G91 G0 X5.
M30
