// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/water_store.h"

#include "core/store/statement.h"
#include "core/store/write_water.h"
#include "tests/support/found_water.h"
#include "tests/support/random_water.h"
#include "tests/support/scratch_folder.h"

#include <algorithm>
#include <array>

#include <gtest/gtest.h>

namespace {

using support::RandomWater;
using support::ScratchFolder;

/// Stops as soon as it has been asked `patience` times.
class Stopping : public base::Progress {
public:
    explicit Stopping(int patience) : patience_(patience) {}
    [[nodiscard]] bool stopAsked() const override { return asked_++ >= patience_; }

private:
    int patience_;
    mutable int asked_ = 0;
};

base::Progress quiet;

water::Water loaded(const std::filesystem::path& path) {
    auto opened = store::open(path);
    EXPECT_TRUE(opened.has_value()) << opened.error().sentence();
    auto read = (*opened)->load(quiet);
    EXPECT_TRUE(read.has_value()) << read.error().sentence();
    return *read;
}

TEST(WaterStore, GivesBackEveryWaterAsItWas) {
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        const ScratchFolder folder;
        const water::Water water = RandomWater(seed).make();
        {
            auto store = store::create(folder.path() / "water.gpkg");
            ASSERT_TRUE(store.has_value()) << store.error().sentence();
            const auto saved = (*store)->save(water, water::allParts, quiet);
            ASSERT_TRUE(saved.has_value()) << saved.error().sentence();
        }
        EXPECT_TRUE(loaded(folder.path() / "water.gpkg") == water);
    }
}

TEST(WaterStore, GivesBackTheLastOfManySaves) {
    const ScratchFolder folder;
    const auto path = folder.path() / "water.gpkg";
    RandomWater random(7);
    auto store = store::create(path);
    ASSERT_TRUE(store.has_value());
    for (int i = 0; i < 10; ++i) {
        const water::Water water = random.make(100);
        ASSERT_TRUE((*store)->save(water, water::allParts, quiet).has_value());
        const auto back = (*store)->load(quiet);
        ASSERT_TRUE(back.has_value()) << back.error().sentence();
        ASSERT_TRUE(*back == water) << "save " << i;
    }
}

TEST(WaterStore, RewritesOnlyThePartsNamed) {
    const ScratchFolder folder;
    auto store = store::create(folder.path() / "water.gpkg");
    ASSERT_TRUE(store.has_value());
    const water::Water before = RandomWater(11).make();
    ASSERT_TRUE((*store)->save(before, water::allParts, quiet).has_value());
    water::Water after = RandomWater(12).make();
    ASSERT_TRUE((*store)->save(after, std::array{water::Part::log}, quiet).has_value());
    water::Water expected = before;
    expected.log = after.log;
    EXPECT_TRUE((*store)->load(quiet).value() == expected);
    ASSERT_TRUE(
        (*store)->save(after, std::array{water::Part::days, water::Part::plan}, quiet).has_value());
    expected.days = after.days;
    expected.plan = after.plan;
    expected.pinnedMarks = after.pinnedMarks;
    expected.banned = after.banned;
    expected.beliefProfiles = after.beliefProfiles;
    expected.dayByHand = after.dayByHand;
    EXPECT_TRUE((*store)->load(quiet).value() == expected);
}

TEST(WaterStore, SeesAChangeOfASingleSounding) {
    const ScratchFolder folder;
    auto store = store::create(folder.path() / "water.gpkg");
    ASSERT_TRUE(store.has_value());
    water::Water water;
    water.days.resize(2);
    water.days[0].id = soundings::SurveyDayId(1);
    water.days[1].id = soundings::SurveyDayId(2);
    for (soundings::SurveyDay& day : water.days) {
        day.soundings.edit().assign(50, {{3.1, 55.2}, units::Depth::metres(4.0), std::nullopt});
        day.passStarts = {0};
    }
    ASSERT_TRUE((*store)->save(water, water::allParts, quiet).has_value());
    water.days[1].soundings.edit()[37].shown = units::Depth::metres(4.1);
    water.days[0].setAsideByHand = {3};
    ASSERT_TRUE((*store)->save(water, std::array{water::Part::days}, quiet).has_value());
    EXPECT_TRUE((*store)->load(quiet).value() == water);
    water.days.erase(water.days.begin());
    ASSERT_TRUE((*store)->save(water, std::array{water::Part::days}, quiet).has_value());
    EXPECT_TRUE((*store)->load(quiet).value() == water);
}

TEST(WaterStore, RefusesTwoSurveyDaysOfOneNumber) {
    const ScratchFolder folder;
    auto store = store::create(folder.path() / "water.gpkg");
    ASSERT_TRUE(store.has_value());
    water::Water water;
    water.days.resize(2);
    water.days[0].id = water.days[1].id = soundings::SurveyDayId(4);
    const auto saved = (*store)->save(water, water::allParts, quiet);
    ASSERT_FALSE(saved.has_value());
    EXPECT_EQ(saved.error().kind, base::ErrorKind::wrongUse);
}

TEST(WaterStore, RefusesANumberThatIsNoneAndKeepsWhatWasThere) {
    const ScratchFolder folder;
    auto store = store::create(folder.path() / "water.gpkg");
    ASSERT_TRUE(store.has_value());
    const water::Water before = RandomWater(21).make();
    ASSERT_TRUE((*store)->save(before, water::allParts, quiet).has_value());
    water::Water after = before;
    after.name = "another";
    after.leadLine.edit().push_back(
        {soundings::LeadLineId(1), {3.1, 55.2}, units::Depth::metres(std::nan("")), std::nullopt});
    ASSERT_FALSE((*store)->save(after, water::allParts, quiet).has_value());
    EXPECT_TRUE((*store)->load(quiet).value() == before);
}

TEST(WaterStore, KeepsWhatWasThereWhenASaveIsCancelled) {
    const ScratchFolder folder;
    auto store = store::create(folder.path() / "water.gpkg");
    ASSERT_TRUE(store.has_value());
    const water::Water before = RandomWater(31).make();
    ASSERT_TRUE((*store)->save(before, water::allParts, quiet).has_value());
    Stopping stopping(0);
    const auto saved = (*store)->save(RandomWater(32).make(), water::allParts, stopping);
    ASSERT_FALSE(saved.has_value());
    EXPECT_EQ(saved.error().kind, base::ErrorKind::cancelled);
    EXPECT_TRUE((*store)->load(quiet).value() == before);
}

TEST(WaterStore, DoesNotCreateOverAFileThatIsThere) {
    const ScratchFolder folder;
    const auto path = folder.file("water.gpkg", "dear diary");
    const auto store = store::create(path);
    ASSERT_FALSE(store.has_value());
    EXPECT_EQ(store.error().kind, base::ErrorKind::unwritableOutput);
    EXPECT_EQ(ScratchFolder::textOf(path), "dear diary");
}

TEST(WaterStore, TellsHowOpeningWent) {
    const ScratchFolder folder;
    const auto path = folder.path() / "water.gpkg";
    EXPECT_EQ(store::stateOf(path), store::FileState::missing);
    EXPECT_EQ(store::create(path).value()->opening(), store::Opening::created);
    EXPECT_EQ(store::stateOf(path), store::FileState::current);
    EXPECT_EQ(store::open(path).value()->opening(), store::Opening::current);
    EXPECT_FALSE(store::open(path).value()->isReadOnly());
}

TEST(WaterStore, FindsAFreshFileWhole) {
    const ScratchFolder folder;
    auto store = store::create(folder.path() / "water.gpkg");
    ASSERT_TRUE(store.has_value());
    const water::Water water = RandomWater(41).make();
    ASSERT_TRUE((*store)->save(water, water::allParts, quiet).has_value());
    const auto report = (*store)->check(quiet);
    ASSERT_TRUE(report.has_value()) << report.error().sentence();
    EXPECT_TRUE(report->isWhole()) << report->faults.front();
    EXPECT_EQ(report->surveyDays, water.days.size());
    EXPECT_EQ(report->stays, water.log.size());
    EXPECT_FALSE(report->hasDrawing);
}

TEST(WriteWater, LeavesAWholeFileAndNothingBesideIt) {
    const ScratchFolder folder;
    const auto path = folder.path() / "water.gpkg";
    const water::Water first = RandomWater(51).make();
    ASSERT_TRUE(store::writeWater(path, first, {}, {}, quiet).has_value());
    EXPECT_TRUE(loaded(path) == first);
    EXPECT_EQ(std::distance(std::filesystem::directory_iterator(folder.path()), {}), 1);
}

/// Every column of every sounding, and which reduction the file says they hold.
std::string soundingRows(const std::filesystem::path& path) {
    const auto connection = store::Connection::open(path, store::Connection::Access::existing);
    store::Statement rows(
        **connection,
        "SELECT group_concat(quote(geom) || quote(day_id) || quote(time) || quote(shown_depth_m) "
        "|| quote(reduced_depth_m) || quote(set_aside), char(10)) || "
        "(SELECT group_concat(quote(reduction_stamp)) FROM survey_days) FROM soundings");
    rows.ask();
    return rows.next() ? rows.text(0) : std::string();
}

TEST(WriteWater, KeepsOfEachSoundingWhatSavingByPartsKeeps) {
    const ScratchFolder folder;
    const support::FoundWater found;
    ASSERT_TRUE(store::writeWater(folder.path() / "whole.gpkg", found.water, found.found, {}, quiet)
                    .has_value());
    {
        const auto store = store::create(folder.path() / "parts.gpkg");
        ASSERT_TRUE(store.has_value());
        ASSERT_TRUE((*store)->save(found.water, water::allParts, quiet).has_value());
        ASSERT_TRUE((*store)->saveFound(found.water, found.found, {}, quiet).has_value());
    }
    const std::string rows = soundingRows(folder.path() / "whole.gpkg");
    EXPECT_EQ(rows, soundingRows(folder.path() / "parts.gpkg"));
    EXPECT_NE(rows.find("'spike'"), std::string::npos);
}

TEST(WriteWater, LeavesNothingWhenCancelled) {
    const ScratchFolder folder;
    const auto path = folder.path() / "water.gpkg";
    Stopping stopping(0);
    const auto written = store::writeWater(path, RandomWater(62).make(), {}, {}, stopping);
    ASSERT_FALSE(written.has_value());
    EXPECT_EQ(written.error().kind, base::ErrorKind::cancelled);
    EXPECT_EQ(std::distance(std::filesystem::directory_iterator(folder.path()), {}), 0);
}

} // namespace
