// jpg 1200x1600 blur 62-120 turn 6 taken "2025:10:03 20:58:37"
#include "shop.inc"
Cam(<37, 15, -36>, <4.2, -1, 0>, 34)
LampLight()
object { LatheBed() translate <20, -7, 0> } object { Wall(62, 1, 35) translate y*-14 } object { RB(<-90, -33, -30>, <140, -31, 62>, .3) texture { T_Wood } }
Headstock(-5) FacePlate(0, 12.5, 22)
union {
  object { RB(<.05, -11, 1>, <1.5, 3, 8>, .12) texture { T_Ground } } object { RB(<.05, -11, 1>, <11, 3, 2.6>, .12) texture { T_Ground } }
  prism { linear_spline -.5, .5, 4, <1, 2>, <9, 2>, <1, 7>, <1, 2> rotate -x*90 rotate x*180 rotate x*-90 translate y*-8 texture { T_LathePaint } }
  object { Head(T_Cast, 0, 0, 0) rotate z*-90 translate <7.2, -4.5, 0> }
  #for (I, 0, 1) union { RB(<3.5 + I*5 - .6, -6.3, -1.9>, <3.5 + I*5 + .6, -2.4, -.9>, .1) cylinder { <3.5 + I*5, -4.4, -2.9>, <3.5 + I*5, -4.4, 4>, .36 } object { Hex(0, .8, .72) rotate -x*90 translate <3.5 + I*5, -4.4, -1.9> } texture { T_Steel } } #end
  #for (I, 0, 2) object { Hex(0, .8, .75) rotate z*-90 translate <1.5, -9 + I*5, 4.8> texture { T_Steel } } #end
  object { RB(<.1, 5, -4>, <4.6, 9.4, 3>, .3) texture { T_Lead } } object { Hex(0, .9, .8) rotate z*-90 translate <4.6, 7.2, -.5> texture { T_Steel } }
  rotate x*-12 }
object { Dial(2.6) rotate y*-42 translate <11.2, 8.6, -.3> }
object { Stand(<22, -16, -8>, <11.4, 9, -.2>) }
object { RB(<14, -17, -10>, <34, -15.9, 8>, .2) texture { T_Ground } }
