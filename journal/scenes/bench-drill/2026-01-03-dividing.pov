// jpg 1600x1200 blur 66-130 taken "2026:01:03 20:44:58"
#include "shop.inc"
Cam(<-19, 20, -40>, <.4, 6.8, 0>, 40)
LampLight()
MillRoom(0, 52)
#declare DY = 7.4;
object { RB(<-19, 0, -5>, <-8, 2, 5>, .3) texture { Painted(<.16,.17,.18>) } } object { RC(<-17.5, DY, 0>, <-9, DY, 0>, 5, .5) texture { Painted(<.16,.17,.18>) } } object { RB(<-17.5, 1.5, -3.6>, <-9, DY, 3.6>, .4) texture { Painted(<.16,.17,.18>) } }
cylinder { <-9, DY, 0>, <-7.6, DY, 0>, 2.2 texture { T_Polish } } object { Chuck3(0, .7, 10) scale .55 translate <-4.6, DY, 0> }
// index plate on the worm shaft, towards the viewer
union { difference { cylinder { 0, -z*.6, 4.6 } #for (K, 0, 4) #local N = 15 + K*4; #for (I, 0, N - 1) cylinder { z, -z*2, .14 translate x*(2 + K*.55) rotate z*I*360/N } #end #end texture { T_Ground } }
  cylinder { z*3, -z*2, .9 texture { T_Steel } } object { RB(<-.7, -.9, -1.5>, <5.2, .9, -1>, .2) rotate z*55 texture { T_Steel } } cylinder { <4.3, 0, -1>, <4.3, 0, -4>, .62 rotate z*55 texture { T_Knob } }
  object { RB(<0, -.3, -.9>, <4.6, .3, -.65>, .1) rotate z*-20 texture { T_Brass } } object { RB(<0, -.3, -.9>, <4.6, .3, -.65>, .1) rotate z*52 texture { T_Brass } } translate <-13.2, DY - .6, -6.2> }
// blank on its shaft, half cut
cylinder { <-4, DY, 0>, <9, DY, 0>, .72 texture { T_TurnX } }
union { difference { object { Gear(14, 1.9, .62, 4) } box { <-5, -1, 0>, <5, 9, 5> } } intersection { cylinder { 0, y*4, 1.9 } box { <-5, -1, -.02>, <5, 9, 5> } } rotate z*-90 rotate x*-50 translate <1, DY, 0> texture { T_TurnX } }
object { Centre(9) translate y*DY } object { RC(<11.5, DY, 0>, <17, DY, 0>, 1.5, .2) texture { T_Steel } } object { RB(<12.5, 0, -2.6>, <17, DY + 2, 2.6>, .5) texture { Painted(<.16,.17,.18>) } } object { RB(<11.5, 0, -4.5>, <18, 1.6, 4.5>, .3) texture { Painted(<.16,.17,.18>) } }
// cutter on an arbor along z
union { object { Gear(18, 3.4, .8, .7) rotate x*-90 translate z*.35 texture { T_HSS } } cylinder { -z*4.6, z*8, 1 texture { T_Steel } } cylinder { -z*2, z*2, 1.6 texture { T_Dull } } object { Hex(0, .9, 1.3) rotate -x*90 translate -z*3.6 texture { T_Black } } object { RB(<-4, -3, 5>, <4, 30, 14>, 1) texture { T_MillPaint } } translate <2.8, DY + 4.9, 0> }
object { RB(<-10, -10, 24>, <14, 70, 44>, 2) texture { T_MillPaint } }
object { Chips(220, 5, 4, .3, 0, T_ChipSteel, .5) translate <3, 0, -4> }
