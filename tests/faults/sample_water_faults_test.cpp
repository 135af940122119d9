// SPDX-License-Identifier: GPL-3.0-or-later
// The sample water's faults were put in by a program that wrote down where; here they are looked
// for.
#include "core/reduction/correct_depths.h"
#include "core/reduction/find_crossings.h"
#include "core/reduction/set_aside_along_track.h"
#include "core/reduction/tie_days.h"

#include "core/readers/read_soundings.h"
#include "core/readers/read_water_facts.h"
#include "tests/support/sample_faults.h"

#include <gtest/gtest.h>

namespace reduction {

namespace {

using soundings::Verdict;

using support::sampleFile;

class SampleWater : public testing::Test {
protected:
    void SetUp() override {
        const auto facts = readers::readSurveyDayFacts(sampleFile("files/survey-days.csv"));
        ASSERT_TRUE(facts) << facts.error().sentence();
        base::Progress progress;
        for (const readers::SurveyDayFacts& fact : *facts) {
            readers::SoundingFileSettings settings;
            settings.unit = fact.unit;
            auto read =
                readers::readSoundings(sampleFile("files/" + fact.file), settings, progress);
            ASSERT_TRUE(read) << read.error().sentence();
            soundings::SurveyDay day;
            day.name = fact.day;
            day.soundings = std::move(read->soundings);
            day.passStarts = std::move(read->passStarts);
            day.waterTemperature = fact.waterTemperature;
            day.sounder.draft = fact.draft.value_or(units::Depth());
            if (fact.level) {
                day.gauge = soundings::Gauge::constant(*fact.level);
            }
            days_.push_back(std::move(day));
        }
        const auto frame = geo::WaterFrame::centredOn({3.1, 55.2});
        ASSERT_TRUE(frame);
        settings_.chartLevel = units::WaterLevel::metresOnGauge(0.0);
        auto reduced = correctDepths(days_, *frame, settings_, progress);
        ASSERT_TRUE(reduced);
        auto cleaned = setAsideAlongTrack(days_, std::move(*reduced), {}, progress);
        ASSERT_TRUE(cleaned) << cleaned.error().sentence();
        survey_ = std::move(*cleaned);
    }

    std::vector<soundings::SurveyDay> days_;
    ReductionSettings settings_;
    ReducedSurvey survey_;
};

TEST_F(SampleWater, LosesItsFaultsAndLittleElse) {
    auto planted = support::sampleFaults();
    std::size_t hits = 0;
    std::size_t wrong = 0;
    std::size_t clean = 0;
    std::map<std::string, std::size_t> missed;
    std::map<std::string, std::size_t> wrongly;
    for (std::size_t d = 0; d < days_.size(); ++d) {
        const auto& faults = planted[days_[d].name];
        for (std::size_t i = 0; i < days_[d].soundings.size(); ++i) {
            const auto at = faults.find(*days_[d].soundings[i].time);
            const bool isFault =
                at != faults.end() && at->second != "bad_checksum" && at->second != "void_fix";
            const Verdict verdict = survey_.days[d].verdicts[i];
            clean += isFault ? 0U : 1U;
            if (isFault && verdict != Verdict::kept) {
                ++hits;
            } else if (isFault) {
                ++missed[days_[d].name + " " + at->second];
            } else if (verdict != Verdict::kept) {
                ++wrong;
                ++wrongly[days_[d].name + " " + std::string(nameOf(verdict))];
            }
        }
    }
    std::size_t missedCount = 0;
    std::string report;
    for (const auto& [kind, count] : missed) {
        missedCount += count;
        report += " missed " + kind + " " + std::to_string(count) + ";";
    }
    for (const auto& [kind, count] : wrongly) {
        report += " wrongly " + kind + " " + std::to_string(count) + ";";
    }
    const double precision = static_cast<double>(hits) / static_cast<double>(hits + wrong);
    const double recall = static_cast<double>(hits) / static_cast<double>(hits + missedCount);
    EXPECT_GE(precision, 0.97) << report;
    EXPECT_GE(recall, 0.95) << report;
    EXPECT_LE(static_cast<double>(wrong), 0.003 * static_cast<double>(clean)) << report;
    RecordProperty("precision", std::to_string(precision));
    RecordProperty("recall", std::to_string(recall));
}

TEST_F(SampleWater, FindsTheLevelOfTheDayWithoutAGauge) {
    base::Progress progress;
    const auto kept = keptSoundings(days_, survey_);
    const auto crossings = findCrossings(kept, {}, progress);
    ASSERT_TRUE(crossings);
    EXPECT_GE(crossings->size(), 30U);
    const auto tie = tieDays(*crossings, days_, {}, progress);
    ASSERT_TRUE(tie);
    EXPECT_EQ(tie->isHeld, (std::vector<bool>{true, false, true}));
    EXPECT_EQ(tie->isTied, (std::vector<bool>{true, true, true}));
    // Its true level is 0.10 m below chart level, so that its depths must be made larger by as
    // much.
    EXPECT_NEAR(tie->offsets[1].inMetres(), 0.10, 0.03);
    EXPECT_DOUBLE_EQ(tie->offsets[0].inMetres(), 0.0);
    EXPECT_LT(tie->after.rms_m, tie->before.rms_m);
}

} // namespace

} // namespace reduction
