// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/colour_space.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace chart {

namespace {

using Three = std::array<double, 3>;
using Matrix = std::array<Three, 3>;

Three times(const Matrix& m, const Three& v) {
    Three product{};
    for (std::size_t row = 0; row < 3; ++row) {
        product[row] = m[row][0] * v[0] + m[row][1] * v[1] + m[row][2] * v[2];
    }
    return product;
}

double linearFrom(double coded) {
    return coded <= 0.04045 ? coded / 12.92 : std::pow((coded + 0.055) / 1.055, 2.4);
}

double codedFrom(double linear) {
    const double held = std::clamp(linear, 0.0, 1.0);
    return held <= 0.0031308 ? held * 12.92 : 1.055 * std::pow(held, 1.0 / 2.4) - 0.055;
}

Three linearFrom(const Srgb& colour) {
    return {linearFrom(colour.red), linearFrom(colour.green), linearFrom(colour.blue)};
}

Srgb codedFrom(const Three& linear) {
    return {codedFrom(linear[0]), codedFrom(linear[1]), codedFrom(linear[2])};
}

constexpr Matrix coneFromOklab{{{1.0, 0.3963377774, 0.2158037573},
                                {1.0, -0.1055613458, -0.0638541728},
                                {1.0, -0.0894841775, -1.2914855480}}};
constexpr Matrix rgbFromCone{{{4.0767416621, -3.3077115913, 0.2309699292},
                              {-1.2684380046, 2.6097574011, -0.3413193965},
                              {-0.0041960863, -0.7034186147, 1.7076147010}}};
constexpr Matrix xyzFromRgb{{{0.4124564, 0.3575761, 0.1804375},
                             {0.2126729, 0.7151522, 0.0721750},
                             {0.0193339, 0.1191920, 0.9503041}}};
constexpr std::array<Matrix, 3> dichromacy{{{{{0.152286, 1.052583, -0.204868},
                                              {0.114503, 0.786281, 0.099216},
                                              {-0.003882, -0.048116, 1.051998}}},
                                            {{{0.367322, 0.860646, -0.227968},
                                              {0.280085, 0.672501, 0.047413},
                                              {-0.011820, 0.042940, 0.968881}}},
                                            {{{1.255528, -0.076749, -0.178779},
                                              {-0.078411, 0.930809, 0.147602},
                                              {0.004733, 0.691367, 0.303900}}}}};

} // namespace

Srgb srgbFrom(const Oklch& colour) {
    const double hue = colour.hue_deg * std::numbers::pi / 180.0;
    Three cone = times(coneFromOklab, {colour.lightness, colour.chroma * std::cos(hue),
                                       colour.chroma * std::sin(hue)});
    for (double& part : cone) {
        part = part * part * part;
    }
    return codedFrom(times(rgbFromCone, cone));
}

Lab labFromXyz(double x, double y, double z) {
    const auto f = [](double t) {
        return t > 216.0 / 24389.0 ? std::cbrt(t) : (24389.0 / 27.0 * t + 16.0) / 116.0;
    };
    const double fx = f(x / 0.95047);
    const double fy = f(y);
    const double fz = f(z / 1.08883);
    return {116.0 * fy - 16.0, 500.0 * (fx - fy), 200.0 * (fy - fz)};
}

Lab labFrom(const Srgb& colour) {
    const Three xyz = times(xyzFromRgb, linearFrom(colour));
    return labFromXyz(xyz[0], xyz[1], xyz[2]);
}

double deltaE(const Srgb& a, const Srgb& b) {
    const Lab one = labFrom(a);
    const Lab other = labFrom(b);
    return std::hypot(one.l - other.l, one.a - other.a, one.b - other.b);
}

double luminanceOf(const Srgb& colour) {
    const Three linear = linearFrom(colour);
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2];
}

double contrast(const Srgb& a, const Srgb& b) {
    const double one = luminanceOf(a);
    const double other = luminanceOf(b);
    const auto [darker, lighter] = std::minmax(one, other);
    return (lighter + 0.05) / (darker + 0.05);
}

Srgb seenBy(Vision vision, const Srgb& colour) {
    return codedFrom(times(dichromacy[static_cast<std::size_t>(vision)], linearFrom(colour)));
}

} // namespace chart
