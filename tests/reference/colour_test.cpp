// SPDX-License-Identifier: GPL-3.0-or-later
// Only where the window is built: colours belong to it.
#ifdef MEREMARK_HAS_DESK
#include "app/chart/colour_space.h"

#include <gtest/gtest.h>

#include <cmath>
#include <string>

namespace {

chart::Srgb hex(const std::string& text) {
    const auto part = [&](std::size_t at) {
        return std::stoi(text.substr(at, 2), nullptr, 16) / 255.0;
    };
    return {part(1), part(3), part(5)};
}

// Ratios by the formula of WCAG 2.2 (relative luminance and contrast ratio), worked out by hand.
TEST(ReferenceContrast, AgreesWithWcag22) {
    EXPECT_NEAR(chart::contrast(hex("#000000"), hex("#ffffff")), 21.0, 1e-9);
    EXPECT_NEAR(chart::contrast(hex("#777777"), hex("#ffffff")), 4.4781, 5e-5);
    EXPECT_NEAR(chart::contrast(hex("#767676"), hex("#ffffff")), 4.5422, 5e-5);
    EXPECT_NEAR(chart::contrast(hex("#949494"), hex("#ffffff")), 3.0335, 5e-5);
    EXPECT_NEAR(chart::contrast(hex("#0000ff"), hex("#ffffff")), 8.5925, 5e-5);
    EXPECT_NEAR(chart::contrast(hex("#ff0000"), hex("#ffffff")), 3.9985, 5e-5);
    EXPECT_NEAR(chart::contrast(hex("#ffff00"), hex("#000000")), 19.556, 5e-4);
}

// CIE 15:2004, L* from Y.
TEST(ReferenceLab, LightnessFollowsCie15) {
    const auto l = [](double y) { return chart::labFromXyz(0.95047 * y, y, 1.08883 * y).l; };
    EXPECT_NEAR(l(0.18), 49.4961, 5e-5);
    EXPECT_NEAR(l(0.5), 76.0693, 5e-5);
    EXPECT_NEAR(l(0.008856), 7.9996, 5e-4);
    EXPECT_NEAR(l(1.0), 100.0, 1e-9);
}

// sRGB primaries through IEC 61966-2-1 and CIE 15:2004, worked out by hand.
TEST(ReferenceLab, LightnessOfTheScreensPrimaries) {
    EXPECT_NEAR(chart::labFrom(hex("#ff0000")).l, 53.2329, 0.01);
    EXPECT_NEAR(chart::labFrom(hex("#00ff00")).l, 87.7370, 0.01);
    EXPECT_NEAR(chart::labFrom(hex("#0000ff")).l, 32.3026, 0.01);
    EXPECT_NEAR(chart::labFrom(hex("#808080")).l, 53.5850, 0.01);
}

// The example of XYZ_to_Lab in the documentation of the library colour-science, D65.
TEST(ReferenceLab, AgreesWithColourScience) {
    const chart::Lab lab = chart::labFromXyz(0.20654008, 0.12197225, 0.05136952);
    EXPECT_NEAR(lab.l, 41.52788, 5e-4);
    EXPECT_NEAR(lab.a, 52.63858, 0.02); // its white is given to four digits
    EXPECT_NEAR(lab.b, 26.92318, 0.02);
}

// Machado, Oliveira and Fernandes 2009, severity 1.0, on linear light, cut to what a screen shows.
TEST(ReferenceDichromacy, RedAndBlueAsSeenWithoutOneCone) {
    const auto isNear = [](const chart::Srgb& seen, const std::string& wanted) {
        const chart::Srgb w = hex(wanted);
        EXPECT_NEAR(seen.red, w.red, 0.5 / 255.0) << wanted;
        EXPECT_NEAR(seen.green, w.green, 0.5 / 255.0) << wanted;
        EXPECT_NEAR(seen.blue, w.blue, 0.5 / 255.0) << wanted;
    };
    using chart::Vision;
    isNear(seenBy(Vision::protan, hex("#ff0000")), "#6d5f00");
    isNear(seenBy(Vision::deutan, hex("#ff0000")), "#a39000");
    isNear(seenBy(Vision::tritan, hex("#ff0000")), "#ff000f");
    isNear(seenBy(Vision::protan, hex("#0000ff")), "#0059ff");
    isNear(seenBy(Vision::deutan, hex("#0000ff")), "#003dfb");
    isNear(seenBy(Vision::tritan, hex("#0000ff")), "#006b96");
    for (const Vision vision : chart::allDichromacies) {
        isNear(seenBy(vision, hex("#ffffff")), "#ffffff");
    }
}

// White of OKLab is L = 1 without chroma; its green of sRGB is (0.8664, 0.2948, 142.5 degrees),
// from memory of Ottosson 2020.
TEST(ReferenceOklch, KnowsWhiteAndGreen) {
    const chart::Srgb white = chart::srgbFrom({1.0, 0.0, 0.0});
    EXPECT_NEAR(white.red, 1.0, 1e-3);
    EXPECT_NEAR(white.green, 1.0, 1e-3);
    EXPECT_NEAR(white.blue, 1.0, 1e-3);
    const chart::Srgb green = chart::srgbFrom({0.8664, 0.2948, 142.5});
    EXPECT_NEAR(green.red, 0.0, 0.03);
    EXPECT_NEAR(green.green, 1.0, 0.01);
    EXPECT_NEAR(green.blue, 0.0, 0.03);
}

} // namespace
#endif
