; expect note RD22 2
O12345 (plate)
G21 G90 G54
M30
