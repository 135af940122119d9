// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/palette.h"

#include <gmock/gmock.h>

namespace {

using chart::Inks;
using chart::Palette;
using chart::srgbFrom;

/// The ink of a theme or of the page, for messages.
std::string called(Inks inks) {
    return std::array{"light", "dark", "high contrast", "grey"}.at(static_cast<std::size_t>(inks));
}

double contrastOf(const QColor& a, const QColor& b) {
    return chart::contrast(srgbFrom(a), srgbFrom(b));
}

TEST(Palette, LightnessFallsSteadilyWithDepthInAllThemes) {
    for (const Inks inks : chart::allInks) {
        double above = 101.0;
        for (int percent = 0; percent <= 100; percent += 4) {
            const double l = chart::labFrom(srgbFrom(Palette::of(inks).depthAt(percent / 100.0))).l;
            EXPECT_LT(l, above - 1.0) << called(inks) << ' ' << percent << " %";
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

// Bands that lie beside each other can be told apart by every eye, in every theme: five of CIE76
// under the dichromacies of Machado, Oliveira and Fernandes 2009 (severity 1.0); our limit, twice
// what can just be seen side by side (2.3, Mahy, van Eycken and Oosterlinck 1994).
TEST(Palette, NeighbouringBandsOfAllThemesDifferByFiveAlsoForDichromats) {
    for (const Inks inks : chart::allInks) {
        const Palette& palette = Palette::of(inks);
        // Of more bands the grey twin has no room: it stops short of black.
        for (std::size_t count = 5; count <= (inks == Inks::grey ? 8U : 9U); ++count) {
            for (std::size_t i = 1; i < count; ++i) {
                const chart::Srgb a = srgbFrom(palette.band(i - 1, count));
                const chart::Srgb b = srgbFrom(palette.band(i, count));
                EXPECT_GE(chart::deltaE(a, b), 5.0) << called(inks) << " band " << i;
                for (const chart::Vision vision : chart::allDichromacies) {
                    const chart::Srgb seenA = seenBy(vision, a);
                    const chart::Srgb seenB = seenBy(vision, b);
                    EXPECT_GE(chart::deltaE(seenA, seenB), 5.0)
                        << called(inks) << " band " << i << " of " << count << ", vision "
                        << static_cast<int>(vision);
                    EXPECT_LT(labFrom(seenB).l, labFrom(seenA).l) << called(inks);
                }
            }
        }
    }
}

// Source of the limits: WCAG 2.2, success criteria 1.4.3 (text 4.5) and 1.4.11 (signs 3).
TEST(Palette, LettersReachTheContrastThatTextNeedsOnEveryGroundOfAllThemes) {
    for (const Inks inks : chart::allInks) {
        const Palette& palette = Palette::of(inks);
        for (const QColor& ground : {palette.paper, palette.card, palette.field}) {
            for (const QColor& letters :
                 {palette.ink, palette.faintInk, palette.rust, palette.plum, palette.reed}) {
                EXPECT_GE(contrastOf(letters, ground), 4.5)
                    << called(inks) << ": " << letters.name().toStdString() << " on "
                    << ground.name().toStdString();
            }
            EXPECT_GE(contrastOf(palette.edge, ground), 3.0) << called(inks) << ": a field's edge";
        }
        // What is chosen, and what is said gravely, is written the other way round.
        EXPECT_GE(contrastOf(palette.card, palette.ink), 4.5) << called(inks);
        EXPECT_GE(contrastOf(palette.card, palette.rust), 4.5) << called(inks);
        for (int percent = 0; percent <= 100; ++percent) {
            const chart::Lettering set = palette.lettersOn(palette.depthAt(percent / 100.0));
            EXPECT_GE(contrastOf(set.letters, set.ground), 4.5) << called(inks) << percent << " %";
        }
    }
}

TEST(Palette, SignsStandOutFromWhatTheyAreDrawnOnInAllThemes) {
    for (const Inks inks : chart::allInks) {
        const Palette& palette = Palette::of(inks);
        for (const QColor& ground : {palette.bed, palette.water}) {
            for (const QColor& sign : {palette.ink, palette.rust, palette.plum, palette.reed}) {
                EXPECT_GE(contrastOf(sign, ground), 3.0)
                    << called(inks) << ": " << sign.name().toStdString() << " in the side view";
            }
        }
        // Weed grows in the shallows: the first quarter of the depths.
        for (int percent = 0; percent <= 25; ++percent) {
            EXPECT_GE(contrastOf(palette.weed, palette.depthAt(percent / 100.0)), 3.0)
                << called(inks) << ": weed at " << percent << " %";
        }
        // The bars of what is counted, which are not printed.
        if (inks != Inks::grey) {
            EXPECT_GE(contrastOf(palette.depthAt(0.5), palette.card), 3.0) << called(inks);
        }
    }
}

TEST(Palette, HighContrastLettersReachSeven) {
    const Palette& palette = Palette::of(Inks::highContrast);
    for (const QColor& letters :
         {palette.ink, palette.faintInk, palette.rust, palette.plum, palette.reed}) {
        EXPECT_GE(contrastOf(letters, palette.card), 7.0) << letters.name().toStdString();
    }
}

TEST(Palette, WhatIsPrintedInColourIsLightWhateverTheScreenShows) {
    EXPECT_EQ(chart::onPaper(Inks::dark), Inks::light);
    EXPECT_EQ(chart::onPaper(Inks::highContrast), Inks::light);
    EXPECT_EQ(chart::onPaper(Inks::light), Inks::light);
    EXPECT_EQ(chart::onPaper(Inks::grey), Inks::grey);
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
