#version 330 core
layout(location = 0) in vec3 place;    // mm, from the picture's origin
layout(location = 1) in vec3 normal;   // out of the metal
layout(location = 2) in vec3 grain;    // the way the edge moved, 0 where the skin is as sawn
layout(location = 3) in vec4 tint;     // mirror colour, linear; openness to the sky
uniform mat4 toClip;
uniform mat4 toView;
uniform vec2 reach;                    // of the room in the frame's units
uniform vec4 plane;                    // kept where dot(plane, (place, 1)) >= 0
out vec3 facing;
out vec3 along;
out vec4 mirror;
out vec3 where;
out vec2 seat;                         // where in the room, 1 at its walls

void main() {
  facing = mat3(toView) * normal;
  along = mat3(toView) * grain;
  mirror = tint;
  where = place;
  vec4 at = vec4(place, 1.0);
  gl_ClipDistance[0] = dot(plane, at);
  gl_Position = toClip * at;
  seat = gl_Position.xy * reach;
}
