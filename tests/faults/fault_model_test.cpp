// SPDX-License-Identifier: GPL-3.0-or-later
// Every act that writes a water file, under every fault that the model knows: the power goes after
// each thing that the disk was told (what was not synced is lost, kept, kept by chance, or torn),
// the disk fails at each, the program is killed at each. What is found afterwards is whole, and
// what was acknowledged is in it. How many states that were is printed.
#include "core/store/copies.h"
#include "core/store/water_store.h"
#include "tests/support/failing_disk.h"
#include "tests/support/found_water.h"
#include "tests/support/power_cut.h"
#include "tests/support/random_water.h"
#include "tests/support/scratch_folder.h"

#include <functional>
#include <iostream>
#include <set>

#include <gtest/gtest.h>
#include <sqlite3.h>
#include <sys/wait.h>
#include <unistd.h>

namespace {

using support::DiskChange;
using support::FailingDisk;
using support::Files;
using support::RandomWater;
using support::ScratchFolder;
using support::Unsynced;

base::Progress quiet;

/// What an act leaves of the water where it is acknowledged.
struct Act {
    std::string name;
    std::function<base::Result<void>(const std::filesystem::path&)> run;
    water::Water before; ///< Of the water in the file, as far as it can be compared.
    water::Water after;
    bool isOlder = false; ///< The file stands at an earlier step.
};

class FaultModel : public testing::Test {
protected:
    void SetUp() override {
        before_ = RandomWater(21).make(12);
        // Rows and pages go as well as come.
        all_ = RandomWater(22).make(16);
        for (const water::Part part : water::allParts) {
            if (part == water::Part::days) { // with the marks that hang on them
                continue;
            }
            acts_.push_back(saving("part " + std::to_string(static_cast<int>(part)), {part}));
        }
        acts_.push_back(saving("all parts", {water::allParts.begin(), water::allParts.end()}));
        acts_.push_back(onOpened("drawing", [this](store::WaterStore& store) {
            return store.saveDrawing(*known_.found.drawn, known_.made.frame, water::Stamp(9));
        }));
        acts_.push_back(onOpened("found", [this](store::WaterStore& store) {
            return store.saveFound(known_.water, known_.found, known_.told(), quiet);
        }));
        Act whole = onOpened("whole", [this](store::WaterStore& store) {
            return store.saveWhole(known_.water, known_.found, known_.told(), quiet);
        });
        whole.after = known_.water;
        acts_.push_back(whole);
        Act upgrade{"upgrade",
                    [](const std::filesystem::path& path) {
                        auto store = store::open(path);
                        return store ? base::Result<void>() : std::unexpected(store.error());
                    },
                    before_, before_, true};
        acts_.push_back(upgrade);
    }
    [[nodiscard]] Act
    onOpened(const std::string& name,
             const std::function<base::Result<void>(store::WaterStore&)>& save) const {
        return {name,
                [save](const std::filesystem::path& path) -> base::Result<void> {
                    auto store = store::open(path);
                    return store ? save(**store) : std::unexpected(store.error());
                },
                before_, before_};
    }
    /// What loading gives once these parts of `all_` were saved over `before_`.
    [[nodiscard]] Act saving(const std::string& name, const std::vector<water::Part>& parts) const {
        Act act = onOpened(name, [this, parts](store::WaterStore& store) {
            return store.save(all_, parts, quiet);
        });
        const ScratchFolder folder;
        const auto path = folder.path() / "water.gpkg";
        lay(path, act);
        EXPECT_TRUE(act.run(path).has_value()) << name;
        act.after = loaded(path);
        return act;
    }
    void lay(const std::filesystem::path& path, const Act& act) const {
        ASSERT_TRUE(store::create(path).value()->save(before_, water::allParts, quiet).has_value());
        if (act.isOlder) {
            sqlite3* file = nullptr;
            ASSERT_EQ(sqlite3_open(path.c_str(), &file), SQLITE_OK);
            ASSERT_EQ(sqlite3_exec(file,
                                   "UPDATE water_file SET value='9' WHERE key='schema_step';"
                                   "DROP INDEX fish_by_stay; CREATE TABLE spare (a); INSERT INTO "
                                   "spare VALUES (zeroblob(9000)); DROP TABLE spare",
                                   nullptr, nullptr, nullptr),
                      SQLITE_OK);
            sqlite3_close(file);
        }
    }
    static water::Water loaded(const std::filesystem::path& path) {
        auto store = store::open(path);
        auto water = store ? (*store)->load(quiet)
                           : base::Result<water::Water>(std::unexpected(store.error()));
        EXPECT_TRUE(water.has_value()) << water.error().sentence();
        return water.value_or(water::Water());
    }
    /// The file is whole and holds what it held before the act or what the act made of it: the
    /// latter in any case where that was acknowledged.
    static void expectKept(const std::filesystem::path& path, const Act& act, bool isAcknowledged) {
        auto store = store::open(path);
        ASSERT_TRUE(store.has_value()) << store.error().sentence();
        const auto report = (*store)->check(quiet);
        ASSERT_TRUE(report.has_value()) << report.error().sentence();
        ASSERT_TRUE(report->isWhole()) << report->faults.front();
        const auto water = (*store)->load(quiet);
        ASSERT_TRUE(water.has_value()) << water.error().sentence();
        ASSERT_TRUE(*water == act.after || (!isAcknowledged && *water == act.before));
    }
    static void say(const char* what, int count) {
        std::cout << "             " << count << " " << what << '\n';
        testing::Test::RecordProperty("states", count);
    }

    water::Water before_;
    water::Water all_;
    const support::FoundWater known_;
    std::vector<Act> acts_;
};

TEST_F(FaultModel, NoCutOfThePowerLosesWhatWasAcknowledged) {
    int states = 0;
    for (const Act& act : acts_) {
        SCOPED_TRACE(act.name);
        const ScratchFolder folder;
        lay(folder.path() / "water.gpkg", act);
        const Files files = support::filesIn(folder.path());
        std::vector<DiskChange> changes;
        {
            FailingDisk disk;
            disk.record();
            ASSERT_TRUE(act.run(folder.path() / "water.gpkg").has_value());
            changes = disk.recorded();
        }
        ASSERT_GT(changes.size(), 4U);
        // Of long acts every so-manieth moment; the last ones, which make it last, all.
        const std::size_t stride = changes.size() / 60 + 1;
        for (std::size_t count = 0; count <= changes.size();
             count += count + 12 > changes.size() ? 1 : stride) {
            for (const Unsynced unsynced :
                 {Unsynced::lost, Unsynced::kept, Unsynced::some, Unsynced::torn}) {
                SCOPED_TRACE(std::to_string(count) + ", " +
                             std::to_string(static_cast<int>(unsynced)));
                const ScratchFolder other;
                support::layFiles(support::afterPowerCut(files, std::span(changes).first(count),
                                                         unsynced, count * 31 + 7),
                                  other.path());
                expectKept(other.path() / "water.gpkg", act, count == changes.size());
                ASSERT_FALSE(HasFatalFailure());
                ++states;
            }
        }
    }
    say("moments at which the power went", states);
    EXPECT_GT(states, 1500);
}

TEST_F(FaultModel, NoFailureOfTheDiskLosesAnything) {
    int failures = 0;
    for (const Act& act : acts_) {
        for (const FailingDisk::Way way : {FailingDisk::Way::isFull, FailingDisk::Way::isBroken}) {
            const ScratchFolder folder;
            const auto path = folder.path() / "water.gpkg";
            lay(path, act);
            const Files files = support::filesIn(folder.path());
            int stride = 1;
            for (int changes = 0;; changes += stride) {
                SCOPED_TRACE(act.name + ", after " + std::to_string(changes));
                support::layFiles(files, folder.path());
                bool isAcknowledged = false;
                {
                    FailingDisk disk;
                    disk.failAfter(changes, way);
                    isAcknowledged = act.run(path).has_value();
                    disk.heal();
                }
                expectKept(path, act, isAcknowledged);
                ASSERT_FALSE(HasFatalFailure());
                if (isAcknowledged) {
                    break;
                }
                ++failures;
                stride = changes / 12 + 1;
            }
        }
    }
    say("failures of the disk", failures);
    EXPECT_GT(failures, 300);
}

TEST_F(FaultModel, NoKillLosesAnything) {
    int kills = 0;
    for (const Act& act : acts_) {
        const ScratchFolder folder;
        const auto path = folder.path() / "water.gpkg";
        lay(path, act);
        const Files files = support::filesIn(folder.path());
        for (int changes = 0;; changes += changes / 40 + 1) {
            SCOPED_TRACE(act.name + ", after " + std::to_string(changes));
            support::layFiles(files, folder.path());
            const pid_t child = fork();
            ASSERT_GE(child, 0);
            if (child == 0) {
                FailingDisk disk;
                disk.killAfter(changes);
                _exit(act.run(path) ? 0 : 1);
            }
            int status = 0;
            ASSERT_EQ(waitpid(child, &status, 0), child);
            ASSERT_TRUE(WIFEXITED(status));
            expectKept(path, act, WEXITSTATUS(status) == 0);
            ASSERT_FALSE(HasFatalFailure());
            if (WEXITSTATUS(status) == 0) {
                break;
            }
            ASSERT_EQ(WEXITSTATUS(status), FailingDisk::killedCode);
            ++kills;
        }
    }
    say("kills", kills);
    EXPECT_GT(kills, 300);
}

/// Two programs that each add a stay of their own to the same water at the same time.
TEST_F(FaultModel, OfTwoProgramsNeitherLosesWhatTheOtherWasTold) {
    const ScratchFolder folder;
    const auto path = folder.path() / "water.gpkg";
    water::Water water = before_;
    water.log = logbook::Log();
    ASSERT_TRUE(store::create(path).value()->save(water, water::allParts, quiet).has_value());
    constexpr int rounds = 100;
    std::set<std::int64_t> acknowledged;
    for (int round = 0; round < rounds; ++round) {
        std::array<pid_t, 2> writers{};
        for (int one = 0; one < 2; ++one) {
            writers.at(static_cast<std::size_t>(one)) = fork();
            if (writers.at(static_cast<std::size_t>(one)) == 0) {
                auto store = store::open(path);
                auto mine = store ? (*store)->load(quiet)
                                  : base::Result<water::Water>(std::unexpected(store.error()));
                if (!mine) {
                    _exit(1);
                }
                logbook::Stay stay;
                stay.id = logbook::StayId(2 * round + one + 1);
                stay.start = units::Moment(std::chrono::hours(500'000 + 2 * round + one));
                stay.end = stay.start + std::chrono::minutes(30);
                mine->log.push_back(stay);
                _exit((*store)->save(*mine, std::array{water::Part::log}, quiet) ? 0 : 1);
            }
        }
        for (int one = 0; one < 2; ++one) {
            int status = 0;
            ASSERT_EQ(waitpid(writers.at(static_cast<std::size_t>(one)), &status, 0),
                      writers.at(static_cast<std::size_t>(one)));
            ASSERT_TRUE(WIFEXITED(status));
            if (WEXITSTATUS(status) == 0) {
                acknowledged.insert(2 * round + one + 1);
            }
        }
        std::set<std::int64_t> held;
        for (const logbook::Stay& stay : loaded(path).log) {
            EXPECT_TRUE(held.insert(stay.id.number()).second) << "nothing is doubled";
        }
        ASSERT_EQ(held, acknowledged) << "round " << round;
    }
    EXPECT_TRUE(store::open(path).value()->check(quiet).value().isWhole());
    EXPECT_GE(acknowledged.size(), static_cast<std::size_t>(rounds)) << "one of two at least";
    say("saves of two programs at once", 2 * rounds);
}

} // namespace
