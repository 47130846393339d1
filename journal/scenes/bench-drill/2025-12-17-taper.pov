// jpg 1000x1000 blur 56-110 taken "2025:12:17 22:26:40"
#include "shop.inc"
Cam(<9, 33, -16>, <10, -1, -3>, 38)
TubeLight()
LatheRoom(51)
Headstock(-5) FacePlate(0, 7, 12) cone { <0, 0, 0>, 1.3, <3, 0, 0>, .2 texture { T_Polish } }
cylinder { <2.6, 0, 0>, <6, 0, 0>, 1.1 texture { T_TurnX } } cone { <6, 0, 0>, 1.9, <15, 0, 0>, 1.25 texture { T_Polish } } cylinder { <15, 0, 0>, <18, 0, 0>, 1 texture { T_TurnX } }
Centre(17.6) Tailstock(22)
Saddle(10)
union { RB(<-4, -5, -9>, <4, -3.6, 3>, .25) RB(<-3.4, -3.6, -8>, <3.4, -2.4, 2>, .2) cylinder { <0, -3.6, -9>, <0, -3.6, -13>, .6 } torus { 1.6, .3 rotate x*90 translate <0, -3.6, -12> } texture { T_Ground } rotate y*94 translate <10, 0, -8.6> }
cylinder { <10, -4.95, -8.6>, <10, -4.6, -8.6>, 5 texture { T_TurnY translate <10, 0, -8.6> } }
object { ToolPost(0, 0) rotate y*4 translate <10, 0, -8.6> }
// lever indicator
union { object { RB(<-.6, -.5, -3>, <.6, .5, .4>, .2) texture { T_Steel } } cylinder { <0, .45, -1.4>, <0, .9, -1.4>, 1.5 texture { T_Steel } } cylinder { <0, .9, -1.4>, <0, .92, -1.4>, 1.35 texture { T_White } } torus { 1.45, .1 translate <0, .9, -1.4> texture { T_Polish } } #for (I, 0, 29) box { <-.02, .92, 1>, <.02, .93, 1.25> rotate y*I*12 translate z*-1.4 texture { T_Line } } #end box { <-.03, .94, -.2>, <.03, .95, 1.1> rotate y*40 translate z*-1.4 texture { T_Red } }
  cone { <0, 0, .3>, .2, <0, 0, 2.2>, .1 texture { T_Polish } } sphere { <0, 0, 2.2>, .16 texture { T_Polish } } rotate y*4 translate <10.6, 0, -3.95> }
object { RB(<10, -.5, -8>, <11, .1, -5>, .1) texture { T_Black } }
