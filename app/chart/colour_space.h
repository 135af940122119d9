// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>

namespace chart {

/// Colour as light: red, green, blue of sRGB, each 0 to 1, gamma-coded as a screen takes them.
struct Srgb {
    double red = 0.0;
    double green = 0.0;
    double blue = 0.0;
    friend bool operator==(const Srgb&, const Srgb&) = default;
};

/// Lightness 0 to 1, chroma, hue in degrees. Source: B. Ottosson, "A perceptual color space for
/// image processing", 2020.
struct Oklch {
    double lightness = 0.0;
    double chroma = 0.0;
    double hue_deg = 0.0;
};

/// CIELAB for daylight D65: L* 0 to 100.
struct Lab {
    double l = 0.0;
    double a = 0.0;
    double b = 0.0;
};

/// Parts that no screen can show are cut to 0 to 1.
[[nodiscard]] Srgb srgbFrom(const Oklch& colour);
/// Source: CIE 15:2004 with the matrix of IEC 61966-2-1.
[[nodiscard]] Lab labFrom(const Srgb& colour);
/// The same from XYZ relative to white = (0.95047, 1, 1.08883).
[[nodiscard]] Lab labFromXyz(double x, double y, double z);
/// CIE76 difference; about 2.3 can just be seen side by side.
[[nodiscard]] double deltaE(const Srgb& a, const Srgb& b);

/// Relative luminance, 0 to 1. Source: WCAG 2.2.
[[nodiscard]] double luminanceOf(const Srgb& colour);
/// Contrast ratio, 1 to 21: text needs 4.5, drawn things 3. Source: WCAG 2.2.
[[nodiscard]] double contrast(const Srgb& a, const Srgb& b);

/// The three kinds of dichromacy.
enum class Vision { protan, deutan, tritan };
inline constexpr std::array allDichromacies{Vision::protan, Vision::deutan, Vision::tritan};

/// What such an eye sees, on linear light. Source: Machado, Oliveira and Fernandes 2009, severity
/// 1.0.
[[nodiscard]] Srgb seenBy(Vision vision, const Srgb& colour);

} // namespace chart
