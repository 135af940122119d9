// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/adding_up.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numeric>
#include <random>

namespace {

using wording::Words;

/// What is written, in hundredths of the unit.
long hundredths(QString text) {
    text.replace(QStringLiteral("−"), QStringLiteral("-"));
    return std::lround(100.0 * text.section(' ', 0, 0).toDouble());
}

TEST(AddingUp, FiguresAddUpAsTheyStandInEitherUnit) {
    const unsigned seed = 20261125;
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> depth_m(0.0, 40.0);
    std::uniform_real_distribution<double> term_m(-0.6, 0.6);
    for (const auto unit : {preferences::UnitSystem::metric, preferences::UnitSystem::imperial}) {
        const Words words(unit);
        for (int i = 0; i < 2000; ++i) {
            std::vector<units::Length> terms{units::Length::metres(depth_m(random))};
            double whole_m = terms[0].inMetres();
            for (int k = 0; k < 4; ++k) {
                terms.push_back(units::Length::metres(term_m(random)));
                whole_m += terms.back().inMetres();
            }
            const QStringList lines = wording::sumWritten(words, terms);
            ASSERT_EQ(lines.size(), 6);
            const long sum = std::accumulate(
                lines.begin(), lines.end() - 1, 0L,
                [](long so_far, const QString& line) { return so_far + hundredths(line); });
            EXPECT_EQ(sum, hundredths(lines.back()));
            const units::Depth whole = units::Depth::metres(whole_m);
            EXPECT_EQ(hundredths(lines.back()),
                      std::lround(100.0 * (words.isMetric() ? whole.inMetres() : whole.inFeet())));
        }
    }
}

TEST(AddingUp, WholeTermsStayAsTheyAre) {
    const std::vector<double> terms{420.0, 0.4, 0.4, 25.0};
    const auto rounded = wording::roundedToAddUp(terms);
    EXPECT_EQ(rounded[0], 420);
    EXPECT_EQ(rounded[3], 25);
    EXPECT_EQ(rounded[1] + rounded[2], 1);
}

TEST(AddingUp, SignsStandBeforeWhatIsAddedAndNotBeforeNothing) {
    const std::vector<units::Length> terms{units::Length::metres(4.2), units::Length::metres(-0.09),
                                           units::Length::metres(0.25), units::Length()};
    EXPECT_EQ(wording::sumWritten(Words(), terms),
              (QStringList{"4.20 m", "−0.09 m", "+0.25 m", "0.00 m", "4.36 m"}));
}

} // namespace
