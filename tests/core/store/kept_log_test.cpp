// SPDX-License-Identifier: GPL-3.0-or-later
// A log is kept again at the cost of what changed in it, and is whole in the file all the same.
#include "core/store/keep_parts.h"
#include "core/store/statement.h"
#include "core/store/water_store.h"
#include "tests/core/store/file_rows.h"
#include "tests/support/scratch_folder.h"

#include <array>
#include <random>

#include <gtest/gtest.h>

namespace {

using support::ScratchFolder;

base::Progress quiet;
constexpr std::array onlyLog{water::Part::log};

logbook::Stay stayOf(int number, int runs) {
    logbook::Stay stay;
    stay.id = logbook::StayId(number);
    stay.place = {3.1 + 1e-6 * number, 55.2};
    stay.start = units::Moment(std::chrono::hours(number));
    stay.end = stay.start + std::chrono::minutes(50);
    stay.note = "stay " + std::to_string(number);
    for (int k = 0; k < runs; ++k) {
        stay.runs.emplace_back();
        stay.runs.back().id = logbook::FishId(10 * number + k);
        stay.runs.back().time = stay.start + std::chrono::minutes(k);
        stay.runs.back().note = "run " + std::to_string(k) + " of " + std::to_string(number);
    }
    return stay;
}

water::Water waterOf(int stays) {
    water::Water water;
    logbook::Log log;
    for (int i = 0; i < stays; ++i) {
        log.push_back(stayOf(i, i % 3));
    }
    water.log = std::move(log);
    return water;
}

class KeptLog : public testing::Test {
protected:
    [[nodiscard]] std::filesystem::path path() const { return folder_.path() / "water.gpkg"; }
    [[nodiscard]] logbook::KeptLog inFile() const {
        const auto read = (*store::open(path(), store::Purpose::looking))->load(quiet);
        EXPECT_TRUE(read.has_value()) << read.error().sentence();
        return read->log;
    }
    /// What another program reads of the log: stays and fish by their numbers.
    [[nodiscard]] std::vector<std::string> rows() const {
        std::vector<std::string> all =
            support::rowsOf(path(), "number, note", "stays ORDER BY fid");
        const auto fish =
            support::rowsOf(path(), "stay_fid, number, note", "fish ORDER BY stay_fid, fid");
        all.insert(all.end(), fish.begin(), fish.end());
        return all;
    }
    ScratchFolder folder_;
};

TEST_F(KeptLog, IsThatOfTheLastSaveWhateverWasDoneToIt) {
    std::mt19937 random(20261127);
    const auto upTo = [&random](std::size_t most) {
        return std::uniform_int_distribution<std::size_t>(0, most)(random);
    };
    water::Water water = waterOf(700);
    auto store = store::create(path()).value();
    ASSERT_TRUE(store->save(water, water::allParts, quiet).has_value());
    for (int step = 0; step < 60; ++step) {
        SCOPED_TRACE(step);
        for (std::size_t k = 0; k <= upTo(2); ++k) {
            const int number = 1000 + 10 * step + static_cast<int>(k);
            switch (upTo(3)) {
            case 0:
                water.log.edit(upTo(water.log.size() - 1)) = stayOf(number, step % 4);
                break;
            case 1:
                water.log.insert(upTo(water.log.size()), stayOf(number, step % 4));
                break;
            case 2:
                water.log.erase(upTo(water.log.size() - 1));
                break;
            default:
                water.log.push_back(stayOf(number, step % 4));
            }
        }
        if (step % 20 == 19) {
            water.log = step % 40 == 39 ? logbook::KeptLog() : waterOf(step * 10).log;
        }
        ASSERT_TRUE(store->save(water, onlyLog, quiet).has_value());
        ASSERT_TRUE(inFile() == water.log);
        if (water.log.empty()) {
            water = waterOf(300);
        }
    }
}

/// How many rows a save of `after` changes where the file holds `before`.
std::int64_t rowsChanged(const std::filesystem::path& path, const water::Water& before,
                         const water::Water& after) {
    auto connection = store::Connection::open(path, store::Connection::Access::existing).value();
    const auto changed = [&] {
        store::Statement total(*connection, "SELECT total_changes()");
        total.ask();
        return total.next() ? total.wholeNumber(0) : -1;
    };
    const std::int64_t already = changed();
    store::keepLogChanges(*connection, after, before.log);
    EXPECT_TRUE(connection->outcome().has_value());
    return changed() - already;
}

TEST_F(KeptLog, IsWrittenWhereItChangedAndNowhereElse) {
    const water::Water before = waterOf(10'000);
    ASSERT_TRUE(store::create(path()).value()->save(before, water::allParts, quiet).has_value());
    water::Water one = before;
    one.log.edit(5'000).note = "another";
    // One chunk, its stays and their fish, taken out and put in, and the two extents.
    EXPECT_LT(rowsChanged(path(), before, one), 1'200);
    EXPECT_TRUE(inFile() == one.log);
    water::Water more = one;
    more.log.push_back(stayOf(20'000, 1));
    EXPECT_LT(rowsChanged(path(), one, more), 1'200);
    EXPECT_TRUE(inFile() == more.log);
    EXPECT_LE(rowsChanged(path(), more, more), 4) << "where the layers lie, and when that was";
}

TEST_F(KeptLog, IsWrittenWholeWhereAnotherProgramNumberedItsRowsAnew) {
    water::Water water = waterOf(600);
    auto store = store::create(path()).value();
    ASSERT_TRUE(store->save(water, water::allParts, quiet).has_value());
    for (const char* sql : {"UPDATE stays SET fid = fid + 7000", "DELETE FROM stays WHERE fid = 3",
                            "UPDATE stays SET fid = 0 WHERE fid = 2"}) {
        support::changeFile(path(), sql);
        water.log.edit(590).note += " more";
        ASSERT_TRUE(store->save(water, onlyLog, quiet).has_value());
        EXPECT_TRUE(inFile() == water.log) << sql;
    }
}

TEST_F(KeptLog, IsWholeAfterASaveThatFailed) {
    struct Stopped : base::Progress {
        [[nodiscard]] bool stopAsked() const override { return true; }
    } stopped;
    water::Water water = waterOf(600);
    auto store = store::create(path()).value();
    ASSERT_TRUE(store->save(water, water::allParts, quiet).has_value());
    const std::vector<std::string> before = rows();
    water.log.edit(10).note = "not kept yet";
    water.log.erase(300);
    ASSERT_FALSE(store->save(water, onlyLog, stopped).has_value());
    EXPECT_EQ(rows(), before);
    water.log.edit(500).note = "the second";
    ASSERT_TRUE(store->save(water, onlyLog, quiet).has_value());
    EXPECT_TRUE(inFile() == water.log);
}

TEST_F(KeptLog, OfAWaterThatWasLoadedIsKeptToo) {
    ASSERT_TRUE(store::create(path()).value()->save(waterOf(600), water::allParts, quiet));
    auto store = store::open(path()).value();
    water::Water water = store->load(quiet).value();
    water.log.insert(0, stayOf(-5, 2));
    water.log.edit(400).runs.clear();
    ASSERT_TRUE(store->save(water, onlyLog, quiet).has_value());
    EXPECT_TRUE(inFile() == water.log);
}

} // namespace
