#version 330 core
in vec2 spot;
in vec4 ink;
uniform sampler2D glyphs;
out vec4 pixel;

void main() {
  pixel = vec4(ink.rgb, ink.a * texture(glyphs, spot).r);
}
