// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/year_words.h"

#include <gtest/gtest.h>

namespace wording {

namespace {

using units::Area;
using units::Length;
using units::Volume;

const Words metric;
const Words imperial{preferences::UnitSystem::imperial};

water::YearsCompared years(double middle_m, double risen_ha, double fallen_ha) {
    water::YearsCompared years;
    years.sums = {Area::hectares(40.0),        Length::metres(middle_m),
                  Area::hectares(risen_ha),    Area::hectares(fallen_ha),
                  Volume::cubicMetres(5200.0), Volume::cubicMetres(900.0)};
    return years;
}

TEST(YearWords, SayWhatHasRisenAndFallenBeyondWhatBothMayBeOff) {
    EXPECT_EQ(saidOfYears(years(0.0, 0.0, 0.0), metric),
              "Of 40.0 ha drawn both times nothing has changed by more than both surveys may be "
              "off.");
    EXPECT_EQ(saidOfYears(years(0.0, 1.2, 0.0), metric),
              "Of 40.0 ha drawn both times 1.2 ha have risen by more than both surveys may be "
              "off, " +
                  metric.volume(Volume::cubicMetres(5200.0)) + " in all.");
    EXPECT_EQ(saidOfYears(years(0.0, 1.2, 0.3), metric),
              "Of 40.0 ha drawn both times 1.2 ha have risen by more than both surveys may be "
              "off, " +
                  metric.volume(Volume::cubicMetres(5200.0)) +
                  " in all; 0.3 ha have fallen by more than both surveys may be off, " +
                  metric.volume(Volume::cubicMetres(900.0)) + " in all.");
    EXPECT_FALSE(saidOfYears(years(0.0, 1.2, 0.3), imperial).contains(" ha "));
}

TEST(YearWords, DoubtALevelWhereAllHasRisenByATenthOfAMetre) {
    EXPECT_TRUE(doubtsOfYears(years(0.099, 0, 0), metric).isEmpty());
    EXPECT_EQ(doubtsOfYears(years(0.34, 0, 0), metric),
              QStringList("Half of the bottom has risen by 0.34 m or more: is a level of one of "
                          "the surveys noted wrongly?"));
    EXPECT_EQ(doubtsOfYears(years(-0.34, 0, 0), metric),
              QStringList("Half of the bottom has sunk by 0.34 m or more: is a level of one of the "
                          "surveys noted wrongly?"));
    water::YearsCompared taken = years(0.34, 0, 0);
    taken.takenOff = Length::metres(0.34);
    EXPECT_EQ(doubtsOfYears(taken, metric),
              QStringList("+0.34 m that all of the bottom has in common is taken for a level noted "
                          "wrongly, and taken off."));
}

TEST(YearWords, SayThatDaysHadNoLevel) {
    water::YearsCompared one = years(0.0, 0, 0);
    one.daysWithoutLevel = 1;
    EXPECT_EQ(doubtsOfYears(one, metric),
              QStringList("One survey day has no level: what all of the bottom has in common may "
                          "be that."));
    one.daysWithoutLevel = 3;
    EXPECT_TRUE(doubtsOfYears(one, metric).value(0).startsWith("3 survey days have no level"));
}

TEST(YearWords, SayOfAMarkWhetherItIsAsItWas) {
    const water::MarkThen none{"a", {}, std::nullopt, {}};
    EXPECT_EQ(saidOfMark(none, metric), "not drawn both times");
    water::MarkThen mark{"a", {}, Length::metres(0.25), Length::metres(0.3)};
    EXPECT_EQ(saidOfMark(mark, metric), QStringLiteral("as it was, ±0.3 m"));
    mark.rise = Length::metres(0.45);
    EXPECT_EQ(saidOfMark(mark, metric), QStringLiteral("risen 0.45 m ±0.3 m"));
    mark.rise = Length::metres(-0.45);
    EXPECT_EQ(saidOfMark(mark, metric), QStringLiteral("fallen 0.45 m ±0.3 m"));
    EXPECT_FALSE(saidOfMark(mark, imperial).contains(" m"));
}

} // namespace

} // namespace wording
