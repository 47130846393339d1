// jpg 1600x1200 blur 60-120 turn 3 taken "2026:08:01 20:57:09"
#include "shop.inc"
Cam(<-17, 21, -36>, <1.4, 7, 0>, 37)
LampLight()
MillRoom(0, 62)
object { AnglePlate(22, 14, 11) translate <-1, 0, 5.2> }
difference { union { RC(<0, 1, 0>, <0, 10, 0>, 4, .4) RB(<-5, 1.6, 3.6>, <5, 9.6, 5.2>, .3) RB(<-2.6, 2.4, 1>, <2.6, 8.8, 5>, .4) texture { T_Cast } } cylinder { <0, -1, 0>, <0, 12, 0>, 2.2 texture { T_TurnY } } cylinder { y*9.85, y*12, 6 texture { T_TurnY } } }
object { Parallels(12, 1, 3) }
object { Strap(8.2, 3.8) rotate y*24 translate <-8.6, 0, 3> translate y*1.4 } object { Strap(8.2, 3.8) rotate y*160 translate <8.8, 0, 3> translate y*1.4 }
cylinder { y*4, y*18, 1 texture { T_Steel } } object { RB(<-.2, 4.6, -2.1>, <.2, 5, .5>, .04) texture { T_HSS } } object { RB(<.6, 9, -.2>, <2.1, 9.3, .2>, .04) texture { T_HSS } } cylinder { y*14, y*20, 2.4 texture { T_Steel } }
MillHead(<0, 19, 0>)
// mirror on a hook
union { object { RB(<-2, 0, -2>, <2, 3, 2>, .2) texture { T_Black } } sphere_sweep { cubic_spline 7, <0, 1, 0>, .14, <0, 3, 0>, .14, <0, 9, 0>, .14, <-.4, 13, 0>, .14, <-2.6, 14.2, -.4>, .14, <-4.2, 13, -.8>, .14, <-4.6, 12.4, -1>, .14 texture { T_Polish } }
  union { cylinder { -y*.12, y*.12, 2 texture { T_Steel } } cylinder { -y*.13, -y*.12, 1.85 pigment { rgb .03 } finish { reflection .9*RF } } cylinder { y*.12, y*.13, 1.85 pigment { rgb .03 } finish { reflection .9*RF } } rotate <-58, -28, 0> translate <-4.4, 11.2, -1> } translate <10.6, 0, -5> }
object { Chips(280, 9, 4, .4, 0, T_ChipIron, .7) translate <-1, 0, -7> }
