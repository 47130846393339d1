// webp 1600x1200 blur 42-84 taken "2025:11:19 21:55:03"
#include "shop.inc"
Cam(<12, 13, -26>, <1.2, 3.2, 0>, 34)
LampLight()
BenchRoom(46)
difference { RB(<-4.4, 0, -3.6>, <4.4, 6.6, 3.6>, .12) cylinder { <-.6, 3.3, -9>, <-.6, 3.3, 9>, 1.6 texture { T_TurnZ translate <-.6, 3.3, 0> } } box { <0, 3.2, -9>, <9, 3.4, 9> texture { T_Mach } } #for (I, -1, 1, 2) cylinder { <2.9, 5.6, I*2>, <2.9, 9, I*2>, .72 texture { T_Mach } } #end texture { T_Alu } rotate y*16 }
#for (I, -1, 1, 2) object { difference { RC(0, y*.95, .62, .06) object { Hex(.4, 2, .3) } texture { T_Black } } translate <2.9, 5.9, I*2> rotate y*16 } #end
difference { cylinder { 0, y*13, 1.58 } cylinder { -y, y*14, 1.15 texture { T_Dull } } texture { T_Polish } translate <9.4, 0, 2.6> }
object { Chips(110, 6, 3, .3, 1, T_ChipAlu, .9) translate <-3, 0, -6> }
union { cylinder { <0, 0, 0>, <0, 0, -7>, .22 } cylinder { <0, 0, 0>, <2.2, 0, 0>, .22 } sphere { 0, .22 } translate <-7, .22, -1> rotate y*20 texture { T_Black } }
