// SPDX-License-Identifier: GPL-3.0-or-later
// Every figure of a table of rates, its notes to the letter, and what the record makes of it.
#include "core/rates/count_rates.h"
#include "core/rates/day_scatter.h"
#include "core/rates/rate_notes.h"
#include "core/rates/shrink_rates.h"

#include "tests/core/rates/log_builder.h"
#include "tests/support/given.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using rates::GroupedStay;
using rates::RateRow;
using rates::RateSettings;
using rates::RateTable;
using rates::Tally;
using support::given;

/// Stays of two rods and of one: 2 x 2 h with a pike of 3 kg, a lost run and a perch without weight
/// on the first, 1 x 3 h blank on the second, 2 x 1 h with pike of 5 and 6 kg on the third.
logbook::Log threeStays() {
    logbook::Log log{logs::stay("2026-10-01", "08:00", "10:00", 2),
                     logs::stay("2026-10-02", "23:00", "23:30", 1),
                     logs::stay("2026-10-04", "08:00", "09:00", 2)};
    log[1].end += std::chrono::minutes(150); // Past midnight.
    log[0].runs = {logs::fish("2026-10-01 09:00", 3.0), logs::lost("2026-10-01 09:05"),
                   logs::fish("2026-10-01 09:10", 0.0, "", " Perch ")};
    log[0].runs[2].weight.reset();
    log[2].runs = {logs::fish("2026-10-04 08:10", 5.0), logs::fish("2026-10-04 08:20", 6.0)};
    return log;
}

RateTable counted(const logbook::Log& log, const RateSettings& settings) {
    base::Progress progress;
    std::vector<GroupedStay> parts;
    for (const logbook::Stay& stay : log) {
        parts.push_back(rates::wholeStay(stay, "all"));
    }
    return rates::countRates(parts, settings, progress).value();
}

TEST(CountedRow, LeavesOutStaysWhoseRodsNobodyNotedAndSaysSo) {
    logbook::Log log = threeStays();
    log[2].rods.reset();
    const RateTable table = counted(log, {});
    EXPECT_EQ(table.effortUnknown, 1U);
    EXPECT_EQ(table.overall.stays, 2);
    EXPECT_EQ(table.overall.fish, 2) << "fish over no effort would make any rate";
    EXPECT_DOUBLE_EQ(table.overall.rodHours, 7.0);
    EXPECT_EQ(
        table.notes.front(),
        "1 stay with 2 fish left out: how many rods were out, or for how long, is not noted.");
    for (logbook::Stay& stay : log) {
        stay.rods.reset();
    }
    const RateTable none = counted(log, {});
    EXPECT_EQ(none.effortUnknown, 3U);
    EXPECT_EQ(none.notes, (std::vector<std::string>{"3 stays with 4 fish left out: how many rods "
                                                    "were out, or for how long, is not noted."}));
    RateSettings later;
    later.from = units::dayFrom("2026-10-04");
    EXPECT_EQ(counted(log, later).effortUnknown, 1U) << "of the days asked for";
}

struct Counted {
    const char* what;
    void (*ask)(RateSettings&);
    double rodHours;
    int stays;
    int blanks;
    int runs;
    int fish;
    std::optional<double> best_kg;
};

TEST(CountedRow, HoldsJustWhatIsAskedFor) {
    using units::Weight;
    const std::vector<Counted> rows{
        {"all", [](RateSettings&) {}, 9.0, 3, 1, 5, 4, 6.0},
        {"pike", [](RateSettings& s) { s.species = "pIKE "; }, 9.0, 3, 1, 5, 3, 6.0},
        {"perch", [](RateSettings& s) { s.species = "perch"; }, 9.0, 3, 2, 5, 1, {}},
        {"trout", [](RateSettings& s) { s.species = "trout"; }, 9.0, 3, 3, 5, 0, {}},
        {"5 kg", [](RateSettings& s) { s.leastWeight = Weight::kilograms(5.0); }, 9.0, 3, 2, 5, 2,
         6.0},
        {"5.01 kg", [](RateSettings& s) { s.leastWeight = Weight::kilograms(5.01); }, 9.0, 3, 2, 5,
         1, 6.0},
        {"6.01 kg",
         [](RateSettings& s) { s.leastWeight = Weight::kilograms(6.01); },
         9.0,
         3,
         3,
         5,
         0,
         {}},
        {"from", [](RateSettings& s) { s.from = units::dayFrom("2026-10-02"); }, 5.0, 2, 1, 2, 2,
         6.0},
        {"from later", [](RateSettings& s) { s.from = units::dayFrom("2026-10-03"); }, 2.0, 1, 0, 2,
         2, 6.0},
        {"to", [](RateSettings& s) { s.to = units::dayFrom("2026-10-02"); }, 7.0, 2, 1, 3, 2, 3.0},
        {"to earlier", [](RateSettings& s) { s.to = units::dayFrom("2026-10-01"); }, 4.0, 1, 0, 3,
         2, 3.0},
        // 23:00 UTC is half past midnight and more of the next day in Oslo's summer.
        {"by the clock",
         [](RateSettings& s) {
             s.clock = units::Clock::inZone("Europe/Oslo").value();
             s.to = units::dayFrom("2026-10-02");
         },
         4.0, 1, 0, 3, 2, 3.0}};
    for (const Counted& row : rows) {
        RateSettings settings;
        row.ask(settings);
        const RateTable table = counted(threeStays(), settings);
        ASSERT_EQ(table.rows.size(), 1U) << row.what;
        for (const RateRow* found : {&table.rows[0], &table.overall}) {
            EXPECT_NEAR(found->rodHours, row.rodHours, 1e-9) << row.what;
            EXPECT_EQ(found->stays, row.stays) << row.what;
            EXPECT_EQ(found->blanks, row.blanks) << row.what;
            EXPECT_EQ(found->runs, row.runs) << row.what;
            EXPECT_EQ(found->fish, row.fish) << row.what;
            EXPECT_EQ(found->best.has_value(), row.best_kg.has_value()) << row.what;
            if (row.best_kg && found->best) {
                EXPECT_NEAR(found->best->inKilograms(), *row.best_kg, 1e-12) << row.what;
            }
            EXPECT_NEAR(given(found->rate).per10RodHours, 10.0 * row.fish / row.rodHours, 1e-9);
            EXPECT_NEAR(found->shareOfEffort, 1.0, 1e-12);
        }
        EXPECT_EQ(table.overall.name, "whole water");
        // The whole is drawn towards nothing: half a fish in no time (Jeffreys).
        const double phi = table.overall.dispersion;
        EXPECT_EQ(phi > 1.0, row.stays > 1) << row.what << ": days scatter";
        EXPECT_NEAR(given(table.overall.shrunk).per10RodHours,
                    10.0 * (row.fish / phi + 0.5) / (row.rodHours / phi), 1e-9);
        EXPECT_NEAR(table.overall.shrunkWidth, 1.0 / std::sqrt(row.fish / phi + 0.5), 1e-9);
    }
}

TEST(CountedRows, OfOneDayHaveTheirSharesAndThePThatHolmMakesOfThem) {
    logbook::Log log{logs::stay("2026-10-01", "00:00", "20:00"),
                     logs::stay("2026-10-01", "00:00", "20:00"),
                     logs::stay("2026-10-01", "00:00", "10:00")};
    log[0].runs.resize(8, logs::fish("2026-10-01 09:00", 3.0));
    log[1].runs.resize(1, logs::fish("2026-10-01 09:00", 3.0));
    base::Progress progress;
    std::vector<GroupedStay> parts{rates::wholeStay(log[0], "bar"), rates::wholeStay(log[1], "dam"),
                                   rates::wholeStay(log[2], "neck")};
    const RateTable two = rates::countRates(std::span(parts).first(2), {}, progress).value();
    // 8 against 1 in 20 h each: p 0.0391 (exact, central); two rows are one test.
    EXPECT_NEAR(given(two.rows[0].pAgainstTheRest), 0.0391, 5e-5);
    EXPECT_NEAR(given(two.rows[1].pAgainstTheRest), 0.0391, 5e-5);
    const RateTable three = rates::countRates(parts, {}, progress).value();
    EXPECT_NEAR(three.rows[0].shareOfEffort, 0.4, 1e-12);
    EXPECT_NEAR(three.rows[1].shareOfEffort, 0.4, 1e-12);
    EXPECT_NEAR(three.rows[2].shareOfEffort, 0.2, 1e-12);
    // Alone: 8 of 9 in a share of 0.4, 1 of 9 in 0.4, 0 of 9 in 0.2; then times 3, 2 and 1.
    const double bar = 2.0 * (9.0 * std::pow(0.4, 8) * 0.6 + std::pow(0.4, 9));
    const double dam = 2.0 * (std::pow(0.6, 9) + 9.0 * 0.4 * std::pow(0.6, 8));
    const double neck = 2.0 * std::pow(0.8, 9);
    EXPECT_NEAR(given(three.rows[0].pAgainstTheRest), 3.0 * bar, 1e-9);
    EXPECT_NEAR(given(three.rows[1].pAgainstTheRest), 2.0 * dam, 1e-9);
    EXPECT_NEAR(given(three.rows[2].pAgainstTheRest), std::max(2.0 * dam, neck), 1e-9);
}

TEST(CountedRow, OfOneDayHasTheExactLimitsOfItsRate) {
    // Garwood 1936, Biometrika 28:437: 2 fish 0.2422 to 7.2247, none 0 to 3.6889; in 4 rod-hours.
    RateSettings first;
    first.to = units::dayFrom("2026-10-01");
    const RateTable two = counted(threeStays(), first);
    EXPECT_EQ(two.rows[0].dispersion, 1.0);
    EXPECT_NEAR(given(two.rows[0].rate).low, 0.2422 / 0.4, 1e-4);
    EXPECT_NEAR(given(two.rows[0].rate).high, 7.2247 / 0.4, 1e-4);
    first.species = "trout";
    EXPECT_NEAR(given(counted(threeStays(), first).overall.rate).low, 0.0, 1e-12);
    EXPECT_NEAR(given(counted(threeStays(), first).overall.rate).high, 3.6889 / 0.4, 1e-4);
}

TEST(CountedRow, OfSeveralDaysHasLimitsThatAllowForTheirScatter) {
    const RateTable table = counted(threeStays(), {});
    const double phi = table.rows[0].dispersion;
    // The days' own scatter by the formula of day_scatter.h, half a fish more in the whole.
    const rates::ByDay days{{units::dayFrom("2026-10-01").value(), {2, 4}},
                            {units::dayFrom("2026-10-02").value(), {0, 3}},
                            {units::dayFrom("2026-10-04").value(), {2, 2}}};
    const std::vector<rates::ByDay> rows{days};
    EXPECT_DOUBLE_EQ(phi, rates::dispersionOf(days, 4.5 / 9.0, rates::dayVariance(rows)));
    EXPECT_GT(phi, 1.2);
    const auto worth = rates::rateOf(Tally{4.0 / phi, 9.0 / phi});
    EXPECT_DOUBLE_EQ(given(table.rows[0].rate).low, given(worth).low);
    EXPECT_LT(given(table.rows[0].rate).low, 1.0899 / 0.9);
    EXPECT_GT(given(table.rows[0].rate).high, 10.2416 / 0.9);
    EXPECT_NEAR(given(table.rows[0].rate).per10RodHours, 40.0 / 9.0, 1e-12);
}

struct ShrunkRow {
    Tally tally;
    double mean;
    double deviation;
};

/// Clayton and Kaldor 1987, Biometrics 43:671, with the half-normal prior on the differences and
/// the log-normal one on their mean that the header names, summed over the same grid by another
/// program.
TEST(ShrunkRates, AreThoseOfTheModelSummedElsewhere) {
    struct Case {
        double differ;
        std::vector<ShrunkRow> rows;
        double untried;
        double untriedDeviation;
        double between;
    };
    const std::vector<Case> cases{
        {1.0,
         {{{2, 10}, .271815, .111451},
          {{0, 6}, .224795, .125154},
          {{5, 12}, .353497, .125180},
          {{1, 9}, .243043, .113745},
          {{8, 15}, .407330, .138746},
          {{3, 8}, .333491, .132535}},
         .321145,
         .224858,
         .477192},
        {1.0,
         {{{9, 20}, .411639, .139703}, {{0, 20}, .039892, .052172}, {{0, 0}, .282306, .498324}},
         .282306,
         .498324,
         1.280100},
        {0.5,
         {{{9, 20}, .374601, .131793}, {{0, 20}, .080478, .070299}, {{0, 0}, .265602, .281337}},
         .265602,
         .281337,
         .738694}};
    for (const Case& one : cases) {
        std::vector<Tally> tallies;
        for (const ShrunkRow& row : one.rows) {
            tallies.push_back(row.tally);
        }
        base::Progress progress;
        const auto shrunk = rates::shrinkRates(tallies, {one.differ}, progress);
        ASSERT_TRUE(shrunk);
        EXPECT_NEAR(shrunk->between, one.between, 2e-5);
        for (std::size_t i = 0; i < one.rows.size(); ++i) {
            EXPECT_NEAR(shrunk->beliefs[i].mean, one.rows[i].mean, 2e-5);
            EXPECT_NEAR(std::sqrt(shrunk->beliefs[i].variance), one.rows[i].deviation, 2e-5);
        }
        const rates::Belief untried = rates::beliefAfter(shrunk->prior, Tally{});
        EXPECT_NEAR(untried.mean, one.untried, 2e-5);
        EXPECT_NEAR(std::sqrt(untried.variance), one.untriedDeviation, 2e-5);
    }
    base::Progress progress;
    for (const auto& [differ, isFine] :
         {std::pair{0.1, true}, {3.0, true}, {0.099, false}, {3.01, false}}) {
        EXPECT_EQ(rates::shrinkRates(std::vector<Tally>{{1, 2}}, {differ}, progress).has_value(),
                  isFine);
    }
}

RateRow rowOf(const std::string& name, int fish, double rodHours, std::optional<double> p = {}) {
    RateRow row;
    row.name = name;
    row.fish = fish;
    row.rodHours = rodHours;
    row.rate = rates::rateOf({static_cast<double>(fish), rodHours});
    row.pAgainstTheRest = p;
    return row;
}

RateTable tableOf(std::vector<RateRow> rows, int fish, double rodHours) {
    RateTable table;
    table.rows = std::move(rows);
    table.overall = rowOf("whole water", fish, rodHours);
    table.overall.stays = 1;
    return table;
}

using Notes = std::vector<std::string>;

TEST(RateNotes, SayWhatDiffersBelowOneInTwenty) {
    const auto of = [](double p) {
        return rates::notesOn(
            tableOf({rowOf("bar", 60, 100, p), rowOf("dam", 40, 100, p)}, 100, 200), {}, {});
    };
    EXPECT_EQ(of(0.049),
              (Notes{"bar brought more than the rest, by more than chance would make it.",
                     "dam brought less than the rest, by more than chance would make "
                     "it."}));
    EXPECT_EQ(of(0.05), (Notes{"No group differs from the rest more than chance would make it."}));
    EXPECT_EQ(rates::notesOn(tableOf({rowOf("bar", 100, 200)}, 100, 200), {}, {}), Notes{});
}

TEST(RateNotes, SayWhereLessThanOneFishWasToBeExpected) {
    RateSettings settings;
    settings.rowWord = "section";
    // Half a fish an hour: two hours are just enough.
    EXPECT_EQ(rates::notesOn(
                  tableOf({rowOf("bar", 98, 196), rowOf("dam", 1, 2.0), rowOf("neck", 1, 1.99)},
                          100, 200),
                  {}, settings),
              (Notes{"Too little tried to tell, less than one fish to be expected: neck (1 of 3 "
                     "sections)."}));
    std::vector<RateRow> many{rowOf("bar", 100, 200)};
    for (const char* name : {"a", "b", "c", "d", "e", "f"}) {
        many.push_back(rowOf(name, 0, 0.1));
    }
    EXPECT_EQ(rates::notesOn(tableOf(many, 100, 200), {}, settings)[0],
              "Too little tried to tell, less than one fish to be expected: a, b, c, d, e, f (6 of "
              "7 sections).");
    many.push_back(rowOf("g", 0, 0.1));
    EXPECT_EQ(rates::notesOn(tableOf(many, 100, 200), {}, settings)[0],
              "Too little tried to tell, less than one fish to be expected: a, b, c, d, e, f and 1 "
              "more (7 of 8 sections).");
}

TEST(RateNotes, SayWhatElseTheTableCannotBear) {
    RateTable table = tableOf({rowOf("bar", 10, 20)}, 10, 20);
    table.overall.stays = 0;
    EXPECT_EQ(rates::notesOn(table, {}, {}), Notes{"No stay was logged in this time."});
    table.overall.stays = 1;
    table.overall.rodHours = 0.0;
    EXPECT_EQ(rates::notesOn(table, {}, {}),
              Notes{"The stays have no length: enter when each began and ended."});
    EXPECT_EQ(rates::notesOn(tableOf({rowOf("bar", 0, 20)}, 0, 20), {}, {}),
              Notes{"No fish counted: the upper limits alone say something."});
    RateTable lone = tableOf({rowOf("bar", 10, 20)}, 12, 20);
    lone.rows.push_back(rowOf("smelt", 2, 0.0));
    const Notes lonely = rates::notesOn(lone, {}, {});
    ASSERT_EQ(lonely.size(), 2U);
    EXPECT_EQ(lonely[1],
              "Fish under \"smelt\" have no effort of their own: they count in the whole only.");
    // More than two of five fish in one stay, of five fish and more.
    const auto inOneStay = [](int most, int fish) {
        return rates::notesOn(tableOf({rowOf("bar", fish, 20)}, fish, 20), {0, most}, {});
    };
    EXPECT_EQ(inOneStay(3, 5), Notes{"3 of 5 fish came in one stay: one good hour can make a "
                                     "rate."});
    EXPECT_EQ(inOneStay(2, 5), Notes{});
    EXPECT_EQ(inOneStay(4, 4), Notes{});
    EXPECT_EQ(rates::notesOn(tableOf({rowOf("bar", 10, 20)}, 10, 20), {3, 1}, {}),
              Notes{"Fish without a weight are left out: 3."});
    const Notes everyTake{"Runs count every take, since a lost one has no species or weight."};
    RateSettings settings;
    settings.species = "pike";
    EXPECT_EQ(rates::notesOn(tableOf({rowOf("bar", 10, 20)}, 10, 20), {}, settings), everyTake);
    settings.species.clear();
    settings.leastWeight = units::Weight::kilograms(1.0);
    EXPECT_EQ(rates::notesOn(tableOf({rowOf("bar", 10, 20)}, 10, 20), {}, settings), everyTake);
}

} // namespace
