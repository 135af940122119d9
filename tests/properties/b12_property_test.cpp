// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/outputs/write_b12.h"
#include "core/readers/read_b12.h"
#include "core/readers/read_soundings.h"
#include "tests/support/scratch_folder.h"

#include <random>

#include <gtest/gtest.h>

namespace {

constexpr unsigned seed = 1207;

/// Two days anywhere on the Earth with what a sounder may show; some without a time, some set
/// aside.
struct MadeUpSurvey {
    std::vector<soundings::SurveyDay> days{2};
    reduction::ReducedSurvey survey;
    std::vector<soundings::Sounding> expected; ///< Kept, with a time.
};

MadeUpSurvey makeUp(std::mt19937& random) {
    std::uniform_real_distribution<double> share(0.0, 1.0);
    MadeUpSurvey made;
    const double lon_deg = -179.9 + 359.0 * share(random);
    const double lat_deg = -89.0 + 177.0 * share(random);
    auto time = units::Moment(std::chrono::sys_days(std::chrono::year{2026} / 9 / 5));
    for (soundings::SurveyDay& day : made.days) {
        reduction::ReducedDay reduced;
        const int count = 1 + static_cast<int>(80.0 * share(random));
        for (int i = 0; i < count; ++i) {
            time += std::chrono::milliseconds(1 + static_cast<int>(3000.0 * share(random)));
            soundings::Sounding sounding{
                {lon_deg + 0.9 * share(random), lat_deg + 0.9 * share(random)},
                units::Depth::metres(50.0 * share(random) * share(random)),
                time};
            const bool isTimed = share(random) < 0.9 || i == 0;
            const bool isKept = share(random) < 0.9 || i == 0;
            if (!isTimed) {
                sounding.time.reset();
            } else if (isKept) {
                made.expected.push_back(sounding);
            }
            day.soundings.edit().push_back(sounding);
            reduced.verdicts.push_back(isKept ? soundings::Verdict::kept
                                              : soundings::Verdict::spike);
        }
        made.survey.days.push_back(std::move(reduced));
    }
    return made;
}

void expectSame(const base::Result<readers::ReadSoundings>& read,
                const std::vector<soundings::Sounding>& expected, int round) {
    ASSERT_TRUE(read) << read.error().sentence() << " seed " << seed << " round " << round;
    EXPECT_EQ(read->kind, readers::SoundingFileKind::b12);
    EXPECT_EQ(read->report.refusedCount(), 0U) << read->report.refusedText();
    ASSERT_EQ(read->soundings.size(), expected.size()) << "seed " << seed << " round " << round;
    for (std::size_t i = 0; i < expected.size(); ++i) {
        const soundings::Sounding& back = read->soundings[i];
        EXPECT_NEAR(back.place.lon_deg, expected[i].place.lon_deg, 0.51e-7);
        EXPECT_NEAR(back.place.lat_deg, expected[i].place.lat_deg, 0.51e-7);
        EXPECT_NEAR(back.shown.inMetres(), expected[i].shown.inMetres(), 0.51e-3);
        EXPECT_EQ(back.time, expected[i].time) << "seed " << seed << " round " << round;
    }
}

TEST(B12Property, WhatIsWrittenReadsBackTheSameInBothForms) {
    std::mt19937 random(seed);
    const support::ScratchFolder scratch;
    base::Progress progress;
    for (int round = 0; round < 40; ++round) {
        const MadeUpSurvey made = makeUp(random);
        const auto json = scratch.path() / "b12.geojson";
        const auto table = scratch.path() / "b12.csv";
        ASSERT_TRUE(outputs::writeB12Geojson(json, made.days, &made.survey));
        ASSERT_TRUE(outputs::writeB12Table(table, made.days, &made.survey));
        expectSame(readers::readB12(json, {}, progress), made.expected, round);
        expectSame(readers::readSoundings(json, {}, progress), made.expected, round);
        expectSame(readers::readB12(table, {}, progress), made.expected, round);
        EXPECT_TRUE(outputs::hasB12Soundings(made.days, &made.survey));
    }
}

TEST(B12Property, HasNothingToSayOfSoundingsWithoutTime) {
    std::vector<soundings::SurveyDay> days(1);
    days[0].soundings.edit().push_back({{3.1, 55.2}, units::Depth::metres(4.0), {}});
    EXPECT_FALSE(outputs::hasB12Soundings(days, nullptr));
}

} // namespace
