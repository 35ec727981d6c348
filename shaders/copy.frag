#version 330 core
in vec2 at;
uniform sampler2D picture;             // rows from the top
out vec4 pixel;

void main() {
  pixel = vec4(texture(picture, vec2(at.x, 1.0 - at.y)).rgb, 1.0);
}
