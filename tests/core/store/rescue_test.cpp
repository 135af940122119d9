// SPDX-License-Identifier: GPL-3.0-or-later
// What can be read of a water file that is not whole ends in one that is, and what cannot is told.
#include "core/store/rescue.h"

#include "core/store/water_store.h"
#include "tests/core/store/file_rows.h"
#include "tests/support/random_water.h"
#include "tests/support/scratch_folder.h"

#include <gmock/gmock.h>

#include <atomic>

namespace {

using base::ErrorKind;
using support::changeFile;
using support::rowsOf;
using support::ScratchFolder;
using testing::Contains;
using testing::HasSubstr;

base::Progress quiet;

class ARescue : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(store::create(path_).value()->save(water_, water::allParts, quiet).has_value());
        bytes_ = ScratchFolder::textOf(path_);
    }
    base::Result<store::Rescue> rescued() const {
        std::error_code ignored;
        std::filesystem::remove(to_, ignored);
        return store::rescue(path_, to_, quiet);
    }
    [[nodiscard]] water::Water held() const {
        return store::open(to_, store::Purpose::looking).value()->load(quiet).value();
    }
    [[nodiscard]] std::size_t pages() const { return bytes_.size() / pageSize; }
    /// The file with one page of nothing but 0xff.
    void destroyPage(std::size_t page) const {
        std::string broken = bytes_;
        broken.replace(page * pageSize, pageSize, std::string(pageSize, '\xff'));
        ASSERT_EQ(folder_.file("water.gpkg", broken), path_);
    }
    static std::size_t soundingsOf(const water::Water& water) {
        std::size_t count = 0;
        for (const soundings::SurveyDay& day : water.days) {
            count += day.soundings.size();
        }
        return count;
    }

    static constexpr std::size_t pageSize = 4096;
    /// One with soundings and a log.
    static water::Water busyWater() {
        for (std::uint64_t seed = 12;; ++seed) {
            water::Water water = support::RandomWater(seed).make(400);
            if (soundingsOf(water) > 100 && water.log.size() > 2) {
                return water;
            }
        }
    }
    const water::Water water_ = busyWater();
    const ScratchFolder folder_;
    const std::filesystem::path path_ = folder_.path() / "water.gpkg";
    const std::filesystem::path to_ = folder_.path() / "rescued.gpkg";
    std::string bytes_;
};

TEST_F(ARescue, OfAWholeFileLosesNothing) {
    const auto rescue = rescued();
    ASSERT_TRUE(rescue.has_value()) << rescue.error().sentence();
    EXPECT_THAT(rescue->lost, testing::IsEmpty());
    EXPECT_TRUE(rescue->held.isWhole());
    EXPECT_TRUE(held() == water_);
}

TEST_F(ARescue, WhateverPageIsDestroyedGivesAWholeFileOrSaysWhyNot) {
    std::size_t partly = 0;
    std::size_t refused = 0;
    for (std::size_t page = 0; page < pages(); ++page) {
        SCOPED_TRACE(page);
        destroyPage(page);
        const std::string broken = ScratchFolder::textOf(path_);
        const auto rescue = rescued();
        EXPECT_TRUE(ScratchFolder::textOf(path_) == broken) << "the damaged file stays as it is";
        if (!rescue) {
            EXPECT_EQ(rescue.error().kind, ErrorKind::damagedWater) << rescue.error().sentence();
            EXPECT_FALSE(std::filesystem::exists(to_));
            ++refused;
            continue;
        }
        EXPECT_TRUE(rescue->held.isWhole()) << rescue->held.faults.front();
        const water::Water found = held();
        EXPECT_LE(soundingsOf(found), soundingsOf(water_));
        EXPECT_TRUE(found == water_ || !rescue->lost.empty()) << "nothing is lost in silence";
        partly += rescue->lost.empty() ? 0U : 1U;
    }
    EXPECT_LE(refused, 6U) << "only the pages that say what tables there are";
    EXPECT_GT(partly, 5U);
}

TEST_F(ARescue, OfAFileThatWasCutTakesWhatStandsBeforeTheCut) {
    ASSERT_EQ(folder_.file("water.gpkg", bytes_.substr(0, bytes_.size() / 2)), path_);
    const auto rescue = rescued();
    ASSERT_TRUE(rescue.has_value()) << rescue.error().sentence();
    EXPECT_THAT(rescue->lost, testing::Not(testing::IsEmpty()));
    EXPECT_TRUE(rescue->held.isWhole());
}

TEST_F(ARescue, LeavesOutTheRowsThatMakeNoSenseAndSaysSo) {
    changeFile(path_, "UPDATE soundings SET shown_depth_m = 9e99 WHERE fid = (SELECT min(fid) + 6 "
                      "FROM soundings);"
                      "UPDATE stays SET start_time = 'soon' WHERE fid = 1;"
                      "UPDATE plan SET value = 'many' WHERE key = 'rods'");
    const auto rescue = rescued();
    ASSERT_TRUE(rescue.has_value()) << rescue.error().sentence();
    const water::Water found = held();
    EXPECT_EQ(soundingsOf(found), soundingsOf(water_) - 1);
    EXPECT_EQ(found.log.size(), water_.log.size() - 1);
    EXPECT_EQ(found.plan.tackle.cast, water_.plan.tackle.cast);
    EXPECT_THAT(rescue->lost, Contains(HasSubstr("shown_depth_m is 9e+99")));
    EXPECT_THAT(rescue->lost, Contains(HasSubstr("'soon' is no time")));
    EXPECT_THAT(rescue->lost, Contains(HasSubstr("the value of rods is no number")));
}

TEST_F(ARescue, KeepsVerdictsAtTheSoundingsThatTheyWereGivenTo) {
    water::Water water = water_;
    soundings::SurveyDay day;
    day.id = soundings::SurveyDayId(991);
    day.soundings.edit().assign(50, {{3.1, 55.2}, units::Depth::metres(4.0), std::nullopt});
    for (std::size_t i = 0; i < 50; ++i) {
        day.soundings.edit()[i].shown = units::Depth::metres(1.0 + 0.1 * static_cast<double>(i));
    }
    day.setAsideByHand.edit() = {4, 20, 40};
    water.days = {day};
    ASSERT_TRUE(store::open(path_).value()->save(water, water::allParts, quiet).has_value());
    changeFile(path_, "UPDATE soundings SET shown_depth_m = 9e99 WHERE fid IN "
                      "(SELECT min(fid) + 10 FROM soundings UNION SELECT min(fid) + 20 FROM "
                      "soundings)");
    ASSERT_TRUE(rescued().has_value());
    const soundings::SurveyDay found = held().days.at(0);
    ASSERT_EQ(found.soundings.size(), 48U);
    const std::vector<std::size_t> wanted{4, 38}; // 20 is gone itself, 40 stands two earlier
    EXPECT_EQ(std::vector<std::size_t>(found.setAsideByHand.begin(), found.setAsideByHand.end()),
              wanted);
    EXPECT_NEAR(found.soundings[38].shown.inMetres(), 5.0, 1e-12);
}

TEST_F(ARescue, TakesAFileOfAnOlderVersionAlong) {
    changeFile(path_, "UPDATE water_file SET value='9' WHERE key='schema_step';"
                      "DROP INDEX fish_by_stay");
    const auto rescue = rescued();
    ASSERT_TRUE(rescue.has_value()) << rescue.error().sentence();
    EXPECT_TRUE(held() == water_);
}

/// Laid over four pages of the table of soundings: the first names the second 400 times, that the
/// third, and so on, so that some 20 pages give their rows 10^10 times.
void nameAgainAndAgain(std::string& file, std::size_t root) {
    const auto place = [&](std::size_t page, std::size_t at) { return (page - 1) * 4096 + at; };
    const auto number = [&](std::size_t at, int bytes) {
        std::size_t value = 0;
        for (int i = 0; i < bytes; ++i) {
            value =
                value * 256 + static_cast<unsigned char>(file.at(at + static_cast<std::size_t>(i)));
        }
        return value;
    };
    const auto put = [&](std::size_t at, std::size_t value, int bytes) {
        for (int i = bytes - 1; i >= 0; --i, value /= 256) {
            file.at(at + static_cast<std::size_t>(i)) = static_cast<char>(value % 256);
        }
    };
    // https://www.sqlite.org/fileformat2.html#b_tree_pages: an interior page of a table is of kind
    // 5; a cell is the number of a page (4 bytes) and the highest row number in it.
    ASSERT_EQ(number(place(root, 0), 1), 5U) << "a table of one page has nothing to name";
    std::vector<std::size_t> pages{root};
    for (std::size_t i = 0; i < 4; ++i) {
        pages.push_back(number(place(root, number(place(root, 12 + 2 * i), 2)), 4));
    }
    constexpr std::size_t count = 400;
    for (std::size_t i = 0; i + 1 < pages.size(); ++i) {
        const std::size_t page = pages[i];
        put(place(page, 0), 5, 1);
        put(place(page, 1), 0, 2);
        put(place(page, 3), count, 2);
        put(place(page, 5), 4096 - 6 * count, 2);
        put(place(page, 7), 0, 1);
        put(place(page, 8), pages[i + 1], 4);
        for (std::size_t cell = 0; cell < count; ++cell) {
            const std::size_t at = 4096 - 6 * (cell + 1);
            put(place(page, 12 + 2 * cell), at, 2);
            put(place(page, at), pages[i + 1], 4);
            put(place(page, at + 4), 0x80 + cell / 128, 1); // a number of seven bits a byte
            put(place(page, at + 5), cell % 128, 1);
        }
    }
}

TEST_F(ARescue, OfAPageThatIsNamedAgainAndAgainComesToAnEnd) {
    water::Water water = water_;
    soundings::SurveyDay day;
    day.id = soundings::SurveyDayId(992);
    day.soundings.edit().assign(2000, {{3.1, 55.2}, units::Depth::metres(4.0), std::nullopt});
    water.days = {day};
    ASSERT_TRUE(store::open(path_).value()->save(water, water::allParts, quiet).has_value());
    const std::string root =
        rowsOf(path_, "rootpage", "sqlite_master WHERE name='soundings'").at(0);
    std::string file = ScratchFolder::textOf(path_);
    nameAgainAndAgain(file, std::stoul(root));
    ASSERT_EQ(folder_.file("water.gpkg", file), path_);

    /// Has had enough after far more questions than the file has bytes.
    class Patience : public base::Progress {
    public:
        [[nodiscard]] bool stopAsked() const override { return ++asked_ > 1'000'000; }

    private:
        mutable std::atomic<int> asked_ = 0;
    } patience;
    const auto rescue = store::rescue(path_, to_, patience);
    ASSERT_TRUE(rescue.has_value()) << rescue.error().sentence();
    EXPECT_TRUE(rescue->held.isWhole());
    EXPECT_EQ(held().log.size(), water_.log.size());
    EXPECT_THAT(rescue->lost, Contains(HasSubstr("of the table soundings only")));
}

TEST_F(ARescue, OfATableWithoutItsFirstPageTakesTheOthers) {
    water::Water water = water_;
    soundings::SurveyDay day;
    day.id = soundings::SurveyDayId(993);
    day.soundings.edit().assign(2000, {{3.1, 55.2}, units::Depth::metres(4.0), std::nullopt});
    water.days = {day};
    ASSERT_TRUE(store::open(path_).value()->save(water, water::allParts, quiet).has_value());
    bytes_ = ScratchFolder::textOf(path_);
    const auto number = [this](std::size_t at, std::size_t size) {
        std::size_t value = 0;
        for (std::size_t i = 0; i < size; ++i) {
            value = value * 256 + static_cast<unsigned char>(bytes_.at(at + i));
        }
        return value;
    };
    // As above: the first cell of the root names the first page of rows.
    const std::size_t root =
        std::stoul(rowsOf(path_, "rootpage", "sqlite_master WHERE name='soundings'").at(0));
    const std::size_t at = (root - 1) * pageSize;
    ASSERT_EQ(number(at, 1), 5U);
    destroyPage(number(at + number(at + 12, 2), 4) - 1);
    const auto rescue = rescued();
    ASSERT_TRUE(rescue.has_value()) << rescue.error().sentence();
    EXPECT_THAT(rescue->lost, Contains(HasSubstr("soundings")));
    EXPECT_GT(soundingsOf(held()), 1900U);
    EXPECT_LT(soundingsOf(held()), 2000U);
}

TEST_F(ARescue, IsRefusedOverAFileAndOutOfNothing) {
    ASSERT_EQ(folder_.file("rescued.gpkg", "mine"), to_);
    const auto over = store::rescue(path_, to_, quiet);
    ASSERT_FALSE(over.has_value());
    EXPECT_EQ(over.error().kind, ErrorKind::unwritableOutput);
    EXPECT_EQ(ScratchFolder::textOf(to_), "mine");
    const auto missing = store::rescue(folder_.path() / "none.gpkg", folder_.path() / "x", quiet);
    ASSERT_FALSE(missing.has_value());
    EXPECT_EQ(missing.error().kind, ErrorKind::unusableInput);
    ASSERT_EQ(folder_.file("water.gpkg", std::string(9000, 'x')), path_);
    const auto none = rescued();
    ASSERT_FALSE(none.has_value());
    EXPECT_EQ(none.error().kind, ErrorKind::damagedWater) << none.error().sentence();
    EXPECT_EQ(none.error().where, path_.string());
    EXPECT_FALSE(std::filesystem::exists(to_));
    EXPECT_EQ(std::ranges::distance(std::filesystem::directory_iterator(folder_.path())), 1)
        << "nothing is left behind";
}

} // namespace
