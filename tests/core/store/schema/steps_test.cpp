// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/schema/steps.h"

#include "core/store/statement.h"
#include "core/store/water_store.h"
#include "tests/support/random_water.h"
#include "tests/support/scratch_folder.h"

#include <array>

#include <gtest/gtest.h>

namespace {

using store::Connection;
using support::ScratchFolder;

base::Progress quiet;

void addGrebes(Connection& connection) {
    connection.execute("CREATE TABLE grebes (id INTEGER PRIMARY KEY NOT NULL, name TEXT)");
}

void addAndStumble(Connection& connection) {
    connection.execute("DELETE FROM settings");
    connection.execute("INSERT INTO nowhere VALUES (1)");
}

bool hasTable(Connection& connection, std::string_view name) {
    store::Statement row(connection, "SELECT 1 FROM sqlite_master WHERE name=?");
    row.ask(name);
    return row.next();
}

class Steps : public testing::Test {
protected:
    void SetUp() override {
        auto store = store::create(path);
        ASSERT_TRUE(store.has_value());
        ASSERT_TRUE((*store)->save(water, water::allParts, quiet).has_value());
    }
    [[nodiscard]] std::unique_ptr<Connection> opened() const {
        return Connection::open(path, Connection::Access::existing).value();
    }

    const water::Water water = support::RandomWater(5).make(50);
    const ScratchFolder folder;
    const std::filesystem::path path = folder.path() / "water.gpkg";
};

TEST_F(Steps, RunOnlyThoseThatTheFileHasNotSeen) {
    const std::array<store::schema::Step, 2> two{store::schema::layStep1, addGrebes};
    const auto connection = opened();
    EXPECT_EQ(store::schema::stepOf(*connection), 1);
    const auto upgraded = store::schema::bringUpToDate(*connection, 1, two);
    ASSERT_TRUE(upgraded.has_value()) << upgraded.error().sentence();
    EXPECT_EQ(store::schema::stepOf(*connection), 2);
    EXPECT_TRUE(hasTable(*connection, "grebes"));
    // This program knows one step: it leaves the file alone from now on.
    EXPECT_EQ(store::stateOf(path), store::FileState::newer);
}

TEST_F(Steps, LeaveTheFileWhereItStoodWhenOneFails) {
    const std::array<store::schema::Step, 3> three{store::schema::layStep1, addGrebes,
                                                   addAndStumble};
    {
        const auto connection = opened();
        ASSERT_FALSE(store::schema::bringUpToDate(*connection, 1, three).has_value());
        EXPECT_EQ(store::schema::stepOf(*connection), 1);
        EXPECT_FALSE(hasTable(*connection, "grebes"));
    }
    auto store = store::open(path);
    ASSERT_TRUE(store.has_value()) << store.error().sentence();
    EXPECT_TRUE((*store)->load(quiet).value() == water);
}

TEST_F(Steps, AreAllDoneInAFreshFile) {
    const auto connection = opened();
    EXPECT_EQ(store::schema::stepOf(*connection), store::schema::newestStep());
}

} // namespace
