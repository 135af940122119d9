// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/palette.h"

#include <gmock/gmock.h>

namespace {

using chart::Palette;
using chart::srgbFrom;

TEST(Palette, LightnessFallsSteadilyWithDepthInBothTwins) {
    for (const bool isGrey : {false, true}) {
        double above = 101.0;
        for (int percent = 0; percent <= 100; percent += 4) {
            const double l =
                chart::labFrom(srgbFrom(Palette::of(isGrey).depthAt(percent / 100.0))).l;
            EXPECT_LT(l, above - 1.0) << percent << " %";
            above = l;
        }
    }
}

TEST(Palette, SevenBandsAreWhatTheRampSays) {
    const std::vector<const char*> ramp{"#e5dcbc", "#becb9e", "#8eb091", "#649287",
                                        "#45717a", "#325367", "#233852"};
    for (std::size_t i = 0; i < ramp.size(); ++i) {
        const QColor wanted{QLatin1String(ramp[i])};
        const QColor band = Palette::screen().band(i, ramp.size());
        EXPECT_LE(std::abs(band.red() - wanted.red()), 2) << ramp[i];
        EXPECT_LE(std::abs(band.green() - wanted.green()), 2) << ramp[i];
        EXPECT_LE(std::abs(band.blue() - wanted.blue()), 2) << ramp[i];
    }
}

TEST(Palette, NeighbouringBandsDifferByEightAlsoForDichromats) {
    constexpr std::size_t count = 7;
    for (std::size_t i = 1; i < count; ++i) {
        const chart::Srgb a = srgbFrom(Palette::screen().band(i - 1, count));
        const chart::Srgb b = srgbFrom(Palette::screen().band(i, count));
        EXPECT_GE(chart::deltaE(a, b), 8.0) << "band " << i;
        for (const chart::Vision vision : chart::allDichromacies) {
            EXPECT_GE(chart::deltaE(seenBy(vision, a), seenBy(vision, b)), 8.0)
                << "band " << i << ", vision " << static_cast<int>(vision);
        }
        const chart::Srgb greyA = srgbFrom(Palette::grey().band(i - 1, count));
        const chart::Srgb greyB = srgbFrom(Palette::grey().band(i, count));
        EXPECT_GE(chart::deltaE(greyA, greyB), 5.0) << "grey band " << i;
    }
}

TEST(Palette, LightnessStillFallsForDichromats) {
    for (const chart::Vision vision : chart::allDichromacies) {
        for (std::size_t i = 1; i < 7; ++i) {
            const auto l = [&](std::size_t k) {
                return labFrom(seenBy(vision, srgbFrom(Palette::screen().band(k, 7)))).l;
            };
            EXPECT_LT(l(i) + 5.0, l(i - 1)) << "band " << i;
        }
    }
}

TEST(Palette, LettersReachTheContrastThatTextNeedsOnEveryGround) {
    for (const bool isGrey : {false, true}) {
        const Palette& palette = Palette::of(isGrey);
        for (const QColor& ground : {palette.paper, palette.card}) {
            for (const QColor& letters :
                 {palette.ink, palette.faintInk, palette.rust, palette.plum, palette.reed}) {
                EXPECT_GE(chart::contrast(srgbFrom(letters), srgbFrom(ground)), 4.5)
                    << letters.name().toStdString() << " on " << ground.name().toStdString();
            }
        }
        for (int percent = 0; percent <= 100; ++percent) {
            const chart::Lettering set = palette.lettersOn(palette.depthAt(percent / 100.0));
            EXPECT_GE(chart::contrast(srgbFrom(set.letters), srgbFrom(set.ground)), 4.5)
                << percent << " %";
        }
    }
}

TEST(Palette, LettersOnVeryLightOrDarkGroundLeaveItAsItIs) {
    const Palette& palette = Palette::screen();
    for (const double share : {0.0, 0.9}) {
        const QColor ground = palette.depthAt(share);
        EXPECT_EQ(palette.lettersOn(ground).ground, ground);
    }
}

TEST(Palette, DifferencesOfEitherSignCanBeToldApartByDichromats) {
    const Palette& palette = Palette::screen();
    const chart::Srgb less = srgbFrom(palette.difference(-1.0));
    const chart::Srgb more = srgbFrom(palette.difference(1.0));
    const chart::Srgb none = srgbFrom(palette.difference(0.0));
    EXPECT_EQ(palette.difference(0.0), palette.paper);
    for (const chart::Vision vision : chart::allDichromacies) {
        EXPECT_GE(deltaE(seenBy(vision, less), seenBy(vision, more)), 20.0);
        EXPECT_GE(deltaE(seenBy(vision, less), seenBy(vision, none)), 20.0);
        EXPECT_GE(deltaE(seenBy(vision, more), seenBy(vision, none)), 20.0);
    }
}

} // namespace
