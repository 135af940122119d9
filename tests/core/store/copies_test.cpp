// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/copies.h"

#include "core/store/connection.h"
#include "core/store/water_store.h"
#include "tests/core/store/file_rows.h"
#include "tests/support/power_cut.h"
#include "tests/support/random_water.h"
#include "tests/support/scratch_folder.h"

#include <gmock/gmock.h>

#include <fstream>

namespace {

using base::ErrorKind;
using std::chrono::hours;
using std::chrono::minutes;
using store::Copy;
using store::CopyRule;
using support::RandomWater;
using testing::ElementsAre;

base::Progress quiet;

const units::Moment now = std::chrono::sys_days(std::chrono::year(2026) / 11 / 27) + hours(12);

class CopiesOfAWater : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(store::create(path_).value()->save(first_, water::allParts, quiet));
    }
    void save(const water::Water& water) const {
        ASSERT_TRUE(store::open(path_).value()->save(water, water::allParts, quiet));
    }
    [[nodiscard]] static water::Water waterIn(const std::filesystem::path& file) {
        return store::open(file, store::Purpose::looking).value()->load(quiet).value();
    }
    [[nodiscard]] std::vector<std::string> namesBeside() const {
        std::vector<std::string> names;
        for (const auto& entry : std::filesystem::directory_iterator(path_.parent_path())) {
            names.push_back(entry.path().filename());
        }
        std::ranges::sort(names);
        return names;
    }

    const water::Water first_ = RandomWater(1).make(50);
    const water::Water second_ = RandomWater(2).make(50);
    const support::ScratchFolder folder_;
    const support::ScratchFolder copiesFolder_;
    const std::filesystem::path path_ = folder_.path() / "mere.gpkg";
    store::Copies copies_{copiesFolder_.path() / "copies"};
};

TEST_F(CopiesOfAWater, HoldWhatTheFileHeldAndStandNewestFirst) {
    ASSERT_TRUE(copies_.take(path_, now));
    save(second_);
    // While the desk has it open to write.
    const auto open = store::open(path_).value();
    ASSERT_FALSE(open->isReadOnly());
    ASSERT_TRUE(copies_.take(path_, now + hours(1)));
    const auto known = copies_.of(path_);
    ASSERT_EQ(known.size(), 2U);
    EXPECT_EQ(known[0].taken, now + hours(1));
    EXPECT_TRUE(waterIn(known[0].file) == second_);
    EXPECT_TRUE(waterIn(known[1].file) == first_);
    EXPECT_TRUE(copies_.of(folder_.path() / "other.gpkg").empty());
    EXPECT_EQ(known[0].bytes, std::filesystem::file_size(known[0].file));
}

TEST_F(CopiesOfAWater, AreTakenOnceAnHourAndOnlyOfWhatIsNew) {
    EXPECT_TRUE(copies_.takeIfDue(path_, now).value());
    EXPECT_FALSE(copies_.takeIfDue(path_, now + hours(2)).value()) << "it was not saved since";
    save(second_);
    EXPECT_FALSE(copies_.takeIfDue(path_, now + minutes(59)).value());
    EXPECT_TRUE(copies_.takeIfDue(path_, now + minutes(60)).value());
    save(first_);
    EXPECT_TRUE(copies_.takeIfDue(path_, now - hours(1)).value()) << "the clock was set back";
    EXPECT_EQ(copies_.of(path_).size(), 3U);
}

TEST_F(CopiesOfAWater, AreNeverOfADamagedFile) {
    ASSERT_TRUE(copies_.take(path_, now));
    std::filesystem::resize_file(path_, std::filesystem::file_size(path_) / 2);
    const auto none = copies_.take(path_, now + hours(1));
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().kind, ErrorKind::damagedWater);
    EXPECT_EQ(none.error().where, path_.string());
    EXPECT_EQ(copies_.of(path_).size(), 1U);
    EXPECT_FALSE(copies_.take(folder_.path() / "none.gpkg", now));
}

TEST_F(CopiesOfAWater, OfPagesThatAreNotInOrderAreNone) {
    ASSERT_TRUE(copies_.take(path_, now));
    std::fstream file(path_, std::ios::in | std::ios::out | std::ios::binary);
    for (int page = 10; page < 30; ++page) {
        file.seekp(page * 4096);
        file << std::string(64, '\x55');
    }
    file.close();
    const auto none = copies_.take(path_, now + hours(1));
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().kind, ErrorKind::damagedWater);
    EXPECT_EQ(copies_.of(path_).size(), 1U);
}

TEST_F(CopiesOfAWater, LeadBackAndForthAgain) {
    const Copy copy = copies_.take(path_, now).value();
    save(second_);
    ASSERT_TRUE(copies_.goBack(copy, path_, now + hours(1)));
    EXPECT_TRUE(waterIn(path_) == first_);
    const auto known = copies_.of(path_);
    ASSERT_EQ(known.size(), 2U);
    ASSERT_TRUE(copies_.goBack(known[0], path_, now + hours(2)));
    EXPECT_TRUE(waterIn(path_) == second_) << "what was gone back from is not lost";
    EXPECT_EQ(namesBeside(), std::vector<std::string>{"mere.gpkg"});
}

TEST_F(CopiesOfAWater, LeadBackFromADamagedFileWhichIsKept) {
    const Copy copy = copies_.take(path_, now).value();
    std::filesystem::resize_file(path_, 5000);
    std::ofstream(path_.string() + "-journal") << "half a journal";
    ASSERT_TRUE(copies_.goBack(copy, path_, now + hours(1)));
    EXPECT_TRUE(waterIn(path_) == first_);
    EXPECT_THAT(namesBeside(),
                ElementsAre("mere (damaged, 2026-11-27T13-00-00Z).gpkg", "mere.gpkg"))
        << "and no journal that would be rolled into the copy";
}

TEST_F(CopiesOfAWater, LeadBackToAFileThatIsGone) {
    const Copy copy = copies_.take(path_, now).value();
    std::filesystem::remove(path_);
    ASSERT_TRUE(copies_.goBack(copy, path_, now + hours(1)));
    EXPECT_TRUE(waterIn(path_) == first_);
}

TEST_F(CopiesOfAWater, DoNotLeadBackUnderSomebodysHands) {
    const Copy copy = copies_.take(path_, now).value();
    save(second_);
    const auto open = store::open(path_).value();
    const auto gone = copies_.goBack(copy, path_, now + hours(1));
    ASSERT_FALSE(gone);
    EXPECT_EQ(gone.error().kind, ErrorKind::waterInUse);
    EXPECT_TRUE(waterIn(path_) == second_);
    std::filesystem::resize_file(copy.file, 5000);
    EXPECT_FALSE(copies_.goBack(copy, path_, now + hours(1)));
}

TEST_F(CopiesOfAWater, TellHowMuchTheyHold) {
    water::Water water;
    water.days.resize(1);
    water.days[0].id = soundings::SurveyDayId(1);
    water.days[0].soundings = {{{3.1, 55.2}, units::Depth::metres(4.0), std::nullopt}};
    water.log = logbook::Log(2);
    water.log.edit(1).runs.resize(3);
    water.pinnedMarks.push_back({"mine", {3.1, 55.2}});
    save(water);
    EXPECT_EQ(store::countsIn(path_).value(), (store::CopyCounts{1, 1, 2, 3, 1}));
    EXPECT_FALSE(store::countsIn(folder_.path() / "none.gpkg"));
}

TEST_F(CopiesOfAWater, IsTakenBeforeAnOlderFileIsBroughtUpToDate) {
    ASSERT_TRUE(store::open(path_, store::Purpose::writing, &copies_));
    EXPECT_TRUE(copies_.of(path_).empty()) << "it is of now";
    support::changeFile(path_, "UPDATE water_file SET value='9' WHERE key='schema_step'");
    const std::string before = support::ScratchFolder::textOf(path_);
    {
        support::ScratchFolder other;
        store::Copies blocked(other.file("file", "x") / "copies");
        const auto refused = store::open(path_, store::Purpose::writing, &blocked);
        ASSERT_FALSE(refused);
        EXPECT_EQ(refused.error().kind, ErrorKind::unwritableOutput);
    }
    EXPECT_TRUE(support::ScratchFolder::textOf(path_) == before);
    const auto opened = store::open(path_, store::Purpose::writing, &copies_);
    ASSERT_TRUE(opened) << opened.error().sentence();
    EXPECT_EQ((*opened)->opening(), store::Opening::upgraded);
    const auto known = copies_.of(path_);
    ASSERT_EQ(known.size(), 1U);
    EXPECT_EQ(store::stateOf(known[0].file), store::FileState::older);
}

/// The ages in hours that are left of one copy every half hour over forty days.
std::vector<int> agesLeft(const CopyRule& rule) {
    std::vector<Copy> copies;
    for (int halfHours = 0; halfHours < 40 * 48; ++halfHours) {
        copies.push_back({std::to_string(halfHours), now - minutes(30 * halfHours), 100});
    }
    const auto gone = store::thinnedOut(copies, now, rule);
    std::vector<int> ages;
    for (const Copy& copy : copies) {
        if (std::ranges::none_of(gone, [&](const Copy& one) { return one.file == copy.file; })) {
            ages.push_back(static_cast<int>((now - copy.taken) / hours(1)));
        }
    }
    return ages;
}

TEST(CopyRule, KeepsOneAnHourThenOneADayThenOneAWeek) {
    const std::vector<int> ages = agesLeft({});
    const auto within = [&](int from, int to) {
        return static_cast<int>(
            std::ranges::count_if(ages, [&](int age) { return age >= from && age < to; }));
    };
    EXPECT_EQ(ages.front(), 0);
    EXPECT_EQ(within(0, 24), 25) << "the first of the present hour, too";
    EXPECT_NEAR(within(24, 7 * 24), 7, 1);
    EXPECT_NEAR(within(7 * 24, 40 * 24), 5, 1);
}

TEST(CopyRule, KeepsWithinItsBudgetAndTheNewestInAnyCase) {
    EXPECT_EQ(agesLeft({hours(1), 1000}).size(), 10U);
    EXPECT_EQ(agesLeft({hours(1), 1000}).back(), 8) << "the newest, then the hours";
    EXPECT_EQ(agesLeft({hours(1), 0}), std::vector<int>{0});
}

} // namespace
