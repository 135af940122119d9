// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/kept_log.h"
#include "core/logbook/log_sum.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <random>

namespace {

using namespace logbook;
using namespace std::chrono_literals;

const units::Moment october{std::chrono::sys_days(std::chrono::year(2026) / 10 / 1) + 6h};

Stay stayAt(std::int64_t id, units::Moment start) {
    Stay stay;
    stay.id = StayId(id);
    stay.start = start;
    stay.end = start + 2h;
    return stay;
}

/// One after the other, three to a day, with 0 to 3 runs; ids from 1 on, each run's above its
/// stay's.
Log season(int stays) {
    static const std::array<std::string, 3> species{"pike", "perch", ""};
    Log log;
    std::int64_t id = 1;
    for (int i = 0; i < stays; ++i) {
        log.push_back(stayAt(id++, october + 24h * (i / 3) + 3h * (i % 3)));
        for (int k = 0; k < i % 4; ++k) {
            Fish run;
            run.id = FishId(id++);
            run.time = log.back().start + 1h;
            run.landed = k != 2;
            run.species = species[static_cast<std::size_t>((i + k) % 3)];
            log.back().runs.push_back(run);
        }
    }
    return log;
}

TEST(KeptLog, FindsAStayById) {
    Log log = season(700);
    std::shuffle(log.begin(), log.end(), std::mt19937(3)); // ids need not ascend with time
    for (const KeptLog& kept : {KeptLog(season(700)), KeptLog(log)}) {
        for (std::size_t i = 0; i < kept.size(); ++i) {
            EXPECT_EQ(positionOf(kept, kept[i].id), i);
        }
        EXPECT_EQ(positionOf(kept, StayId(4711)), std::nullopt);
        EXPECT_EQ(positionOf(kept, StayId()), std::nullopt);
    }
    EXPECT_EQ(positionOf({}, StayId(1)), std::nullopt);
}

TEST(KeptLog, KnowsItsGreatestIdOfStayOrFish) {
    EXPECT_EQ(greatestIdIn({}), 0);
    KeptLog kept(season(500));
    std::int64_t greatest = 0;
    for (const Stay& stay : kept) {
        greatest = std::max(greatest, stay.id.number());
        for (const Fish& run : stay.runs) {
            greatest = std::max(greatest, run.id.number());
        }
    }
    EXPECT_EQ(greatestIdIn(kept), greatest);
    kept.edit(3).runs.front().id = FishId(9000);
    EXPECT_EQ(greatestIdIn(kept), 9000);
    kept.edit(200).id = StayId(9001);
    EXPECT_EQ(greatestIdIn(kept), 9001);
}

TEST(KeptLog, KnowsWhetherItIsInOrder) {
    EXPECT_TRUE(isInOrder(KeptLog()));
    EXPECT_TRUE(isInOrder(KeptLog(season(400))));
    for (const std::size_t late : {0U, 1U, 127U, 128U, 398U}) {
        KeptLog kept(season(400));
        kept.edit(late).start = kept[late + 1].start + 1min;
        EXPECT_FALSE(isInOrder(kept)) << late;
    }
    const Stay one = stayAt(1, october);
    const Stay two = stayAt(2, october);
    EXPECT_TRUE(isInOrder(KeptLog{one, two}));
    EXPECT_FALSE(isInOrder(KeptLog{two, one})) << "the same start: by id";
}

TEST(KeptLog, PutsStaysWhereTheyBelong) {
    std::mt19937 chance(11);
    for (const int more : {1, 20, 64, 65, 300}) {
        Log wanted = season(600);
        Log fresh;
        for (int i = 0; i < more; ++i) {
            // Some before all others, some after, some at the very start of another.
            fresh.push_back(
                stayAt(10'000 + i, october + 1h * (static_cast<int>(chance() % 6'000) - 500)));
        }
        KeptLog kept(wanted);
        putInOrder(kept, fresh);
        wanted.insert(wanted.end(), fresh.begin(), fresh.end());
        sortByTime(wanted);
        EXPECT_EQ(kept.copied(), wanted) << more;
    }
    KeptLog mixed{stayAt(3, october + 2h), stayAt(1, october)};
    putInOrder(mixed, {stayAt(2, october + 1h)});
    EXPECT_EQ(mixed,
              (KeptLog{stayAt(1, october), stayAt(2, october + 1h), stayAt(3, october + 2h)}))
        << "and the others too";
}

TEST(KeptLog, AStayReplacedMovesWithItsStart) {
    for (const std::size_t from : {0U, 5U, 130U, 299U}) {
        for (const auto by : {-3000h, -1h, 0h, 1h, 3000h}) {
            Log wanted = season(300);
            KeptLog kept(wanted);
            Stay stay = wanted[from];
            stay.start += by;
            stay.note = "moved";
            replace(kept, from, stay);
            wanted[from] = stay;
            sortByTime(wanted);
            EXPECT_EQ(kept.copied(), wanted) << from;
        }
    }
}

TEST(KeptLog, CountsARowForEachStayAndRun) {
    const KeptLog kept(season(300));
    std::size_t rows = 0;
    for (const auto& chunk : kept.chunks()) {
        rows += rowsOf(*chunk);
    }
    EXPECT_EQ(rows, 300U + 75U * (0 + 1 + 2 + 3));
}

TEST(LogSum, OfPartsPutTogetherIsThatOfTheWhole) {
    const Log log = season(400);
    const auto azores = units::Clock::inZone("Atlantic/Azores").value();
    for (const auto& clock : {units::Clock(), azores}) {
        const LogSum whole = LogSum::of(log, clock);
        for (const std::size_t part : {1U, 2U, 7U, 128U, 400U}) {
            LogSum sum;
            for (std::size_t from = 0; from < log.size(); from += part) {
                sum.add(LogSum::of(std::span(log).subspan(from, std::min(part, log.size() - from)),
                                   clock));
            }
            sum.add({});
            EXPECT_EQ(sum, whole) << part;
        }
    }
}

TEST(LogSum, CountsByTheClockOfTheWater) {
    Log log{stayAt(1, october), stayAt(2, october + 16h), stayAt(3, october + 17h + 30min)};
    log[1].runs.resize(2);
    log[1].runs[0].species = "pike";
    log[1].runs[1].landed = false;
    log[1].runs[1].species = "bream";
    using Month = LogSum::Month;
    const auto utc = LogSum::of(log, units::Clock());
    EXPECT_EQ(utc.whole(), (Month{1, 3, 2, 1}));
    EXPECT_EQ(utc.species, std::set<std::string>{"pike"}) << "of what was landed";
    // 23:30 UTC is half past midnight in London in October.
    const auto london = LogSum::of(log, units::Clock::inZone("Europe/London").value());
    EXPECT_EQ(london.whole(), (Month{2, 3, 2, 1}));
    EXPECT_EQ(LogSum().whole(), Month());
}

} // namespace
