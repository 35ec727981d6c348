; absent RD22
O1234 (plate)
G21 G90 G54
M30
