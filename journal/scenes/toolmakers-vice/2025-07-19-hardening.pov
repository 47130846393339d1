// jpg 1600x1200 blur 58-130 taken "2025:07:19 22:08:19"
#include "shop.inc"
Cam(<-14, 20, -42>, <1.5, 4, 0>, 36)
Key(<-50, 60, -30>, rgb <.5, .42, .34>, 16)
Fill(<50, 50, -60>, rgb <.05, .065, .1>)
Sky(<.05,.045,.04>, <.18,.16,.14>, <.4,.35,.3>)
#if (!Depth) light_source { <0, 9, -2> rgb <1.3,.42,.09>*.9 fade_distance 10 fade_power 2 } light_source { <-7, 8.2, -3> rgb <.25,.5,1.1>*.5 fade_distance 9 fade_power 2 } #end
BenchRoom(5)
#declare T_Brick = texture { pigment { granite color_map { [0 rgb <.55,.36,.20>] [1 rgb <.72,.53,.33>] } scale 3 } normal { granite .5 scale .8 } finish { diffuse .8 } }
object { RB(<-11, 0, -5>, <11, 6, 6>, .4) texture { T_Brick } }
object { RB(<-11, 0, 0>, <11, 6, 5.5>, .4) rotate y*-4 translate <0, 6.05, 3> texture { T_Brick translate 5 } }
union { object { RB(<-3.2, 0, -1.7>, <3.2, .6, 1.7>, .07) pigment { gradient x color_map { [0 rgb <1.0,.30,.05>] [.5 rgb <1,.20,.02>] [1 rgb <.55,.05,.005>] } scale 8 translate -4 } } finish { diffuse .3 emission 1.1*RF } rotate <-62, 0, 0> rotate y*8 translate <.3, 6.7, -.8> }
sphere_sweep { cubic_spline 6, <0, 8.6, .3>, .12, <2.2, 9.4, -.6>, .12, <6, 11, -4>, .12, <12, 9, -8>, .12, <17, 4, -12>, .12, <24, 0, -14>, .12 texture { T_Dull } }
// torch, from the left
union { cylinder { 0, x*-9, .7 texture { T_Brass } } cylinder { x*-8, x*-22, 1.1 texture { T_Knob } } cone { 0, .7, x*1.4, .95 open texture { T_Brass } }
  #if (!Depth) cone { x*1.2, .7, x*4.2, .08 pigment { rgb <.35,.6,1> transmit .45 } finish { diffuse 0 emission 1.5 } no_shadow } cone { x*1.2, .95, x*8.2, .15 pigment { rgb <.25,.4,1> transmit .8 } finish { diffuse 0 emission .9 } no_shadow } #end
  rotate <0, -14, -14> translate <-9, 9.6, -3.4> }
// oil bucket with its lid
difference { cone { 0, 5.2, y*12, 6.4 } cone { y*.3, 5, y*13, 6.2 } texture { Painted(<.03,.035,.045>) } translate <20, 0, 6> }
cylinder { <20, 9.6, 6>, <20, 9.7, 6>, 6.1 pigment { rgb <.015,.01,.004> } finish { diffuse .6 specular .6*RF roughness .01 reflection .25*RF } }
union { RC(0, y*.5, 7, .15) sphere { y*1.2, 1.1 } texture { Painted(<.03,.035,.045>) } rotate <-72, -24, 0> translate <21.5, 7.2, -2.6> }
