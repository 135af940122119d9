// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rates/count_rates.h"

#include "core/base/number_text.h"
#include "core/rates/compare_rates.h"
#include "core/rates/day_scatter.h"
#include "core/rates/rate_notes.h"
#include "core/rates/shrink_rates.h"

#include <algorithm>
#include <map>
#include <set>

namespace rates {

namespace {

using base::ErrorKind;
using logbook::Fish;
using logbook::Stay;

/// Which stays and fish count.
class Sieve {
public:
    explicit Sieve(const RateSettings& settings)
        : settings_(settings), species_(base::lowerCase(base::trimmed(settings.species))) {}

    /// A stay over midnight is one of the day on which it began.
    [[nodiscard]] units::Day dayOf(const Stay& stay) const {
        return settings_.clock.dayOf(stay.start);
    }
    [[nodiscard]] bool takes(const Stay& stay) const {
        const units::Day day = dayOf(stay);
        return (!settings_.from || day >= *settings_.from) &&
               (!settings_.to || day <= *settings_.to);
    }
    [[nodiscard]] bool isAskedFor(const Fish& fish) const {
        return fish.landed &&
               (species_.empty() || base::lowerCase(base::trimmed(fish.species)) == species_);
    }
    [[nodiscard]] bool isHeavyEnough(const Fish& fish) const {
        return !settings_.leastWeight || (fish.weight && *fish.weight >= *settings_.leastWeight);
    }

private:
    const RateSettings& settings_;
    std::string species_;
};

void countFish(RateRow& row, const Fish& fish) {
    ++row.fish;
    if (fish.weight && (!row.best || *fish.weight > *row.best)) {
        row.best = fish.weight;
    }
}

/// Rows by name, and the whole, while they are being counted.
class Counter {
public:
    explicit Counter(const RateSettings& settings) : sieve_(settings) {}

    void take(const GroupedStay& part) {
        if (!sieve_.takes(*part.stay)) {
            return;
        }
        if (!part.stay->rodHours()) {
            takeUnknown(*part.stay);
            return;
        }
        Group& group = groups_[part.group];
        group.row.rodHours += part.rodHours;
        overall_.rodHours += part.rodHours;
        const units::Day day = sieve_.dayOf(*part.stay);
        Tally& hereThatDay = group.days[day];
        Tally& thatDay = days_[day];
        hereThatDay.rodHours += part.rodHours;
        thatDay.rodHours += part.rodHours;
        int& fishOfStay = fishOf_[part.stay];
        int& fishHere = group.fishOf[part.stay];
        for (const Fish* run : part.runs) {
            ++group.row.runs;
            ++overall_.runs;
            if (!sieve_.isAskedFor(*run)) {
                continue;
            }
            if (!sieve_.isHeavyEnough(*run)) {
                report_.withoutWeight += run->weight ? 0 : 1;
                continue;
            }
            countFish(group.row, *run);
            countFish(overall_, *run);
            hereThatDay.fish += 1.0;
            thatDay.fish += 1.0;
            ++fishOfStay;
            ++fishHere;
        }
    }

    /// How much days differ by what all their fish have in common.
    [[nodiscard]] double dayVariance() const {
        std::vector<ByDay> rows;
        for (const auto& [name, group] : groups_) {
            rows.push_back(group.days);
        }
        return rates::dayVariance(rows);
    }
    [[nodiscard]] const ByDay& daysOf(const std::string& name) const {
        const auto found = groups_.find(name);
        return found == groups_.end() ? none_ : found->second.days;
    }
    [[nodiscard]] const ByDay& days() const { return days_; }
    /// Of all rows but this one.
    [[nodiscard]] ByDay daysBeside(const std::string& name) const {
        ByDay rest = days_;
        for (const auto& [day, tally] : daysOf(name)) {
            rest[day].fish -= tally.fish;
            rest[day].rodHours -= tally.rodHours;
        }
        std::erase_if(rest, [](const auto& entry) { return !(entry.second.rodHours > 1e-9); });
        return rest;
    }
    [[nodiscard]] std::size_t effortUnknown() const { return unknown_.size(); }
    [[nodiscard]] RateRow row(const std::string& name) const {
        const auto found = groups_.find(name);
        RateRow row =
            found == groups_.end() ? RateRow{} : settled(found->second.row, found->second.fishOf);
        row.name = name;
        return row;
    }
    [[nodiscard]] bool knows(const std::string& name) const { return groups_.contains(name); }
    [[nodiscard]] std::vector<std::string> names() const {
        std::vector<std::string> names;
        for (const auto& [name, group] : groups_) {
            names.push_back(name);
        }
        return names;
    }
    [[nodiscard]] RateRow overall() const {
        RateRow row = settled(overall_, fishOf_);
        row.name = "whole water";
        return row;
    }
    [[nodiscard]] CountingReport report() const {
        CountingReport report = report_;
        for (const auto& [stay, fish] : fishOf_) {
            report.mostInOneStay = std::max(report.mostInOneStay, fish);
        }
        return report;
    }

private:
    using FishByStay = std::map<const Stay*, int>;

    /// Fish over an effort that nobody knows would make any rate.
    void takeUnknown(const Stay& stay) {
        if (unknown_.insert(&stay).second) {
            report_.fishWithoutEffort += static_cast<int>(std::ranges::count_if(
                stay.runs, [this](const Fish& fish) { return sieve_.isAskedFor(fish); }));
        }
    }

    struct Group {
        RateRow row;
        FishByStay fishOf;
        ByDay days;
    };

    static RateRow settled(RateRow row, const FishByStay& fishOf) {
        row.stays = static_cast<int>(fishOf.size());
        row.blanks = static_cast<int>(
            std::ranges::count_if(fishOf, [](const auto& entry) { return entry.second == 0; }));
        return row;
    }

    Sieve sieve_;
    std::map<std::string, Group> groups_;
    FishByStay fishOf_;
    ByDay days_;
    ByDay none_;
    RateRow overall_;
    std::set<const Stay*> unknown_; ///< Stays whose effort nobody knows.
    CountingReport report_;
};

std::vector<std::string> rowNames(const Counter& counter, const RateSettings& settings) {
    std::vector<std::string> names;
    for (const std::string& name : settings.order) {
        const bool isNew = std::ranges::find(names, name) == names.end();
        if (isNew && (settings.listUntried || counter.knows(name))) {
            names.push_back(name);
        }
    }
    for (const std::string& name : counter.names()) {
        if (std::ranges::find(names, name) == names.end()) {
            names.push_back(name);
        }
    }
    return names;
}

/// The rate of a row with the scatter of its days in the interval.
void settleScatter(RateRow& row, const ByDay& days, double perRodHour, double dayVariance) {
    row.dispersion = dispersionOf(days, perRodHour, dayVariance);
    row.rate = rateOf(worthOf(row.tally(), row.dispersion));
}

Tally worthOf(const RateRow& row) {
    return worthOf(row.tally(), row.dispersion);
}

base::Result<void> shrinkRows(RateTable& table, base::Progress& progress) {
    std::vector<Tally> worth;
    for (const RateRow& row : table.rows) {
        worth.push_back(worthOf(row));
    }
    const auto shrunk = shrinkRates(worth, ShrinkSettings(), progress);
    if (!shrunk) {
        return std::unexpected(shrunk.error());
    }
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        table.rows[i].shrunk = rateAfter(shrunk->prior, worth[i]);
        table.rows[i].shrunkWidth = shrunk->beliefs[i].relativeWidth();
    }
    const Belief untried = beliefAfter(shrunk->prior, Tally{});
    table.untried = rateAfter(shrunk->prior, Tally{});
    table.untriedWidth = untried.relativeWidth();
    // Jeffreys' prior for a Poisson mean: half a fish in no time.
    const Belief whole = beliefAfter(GammaPrior{0.5, 0.0}, worthOf(table.overall));
    table.overall.shrunk = whole.rate();
    table.overall.shrunkWidth = whole.relativeWidth();
    return {};
}

base::Result<void> compareRows(RateTable& table, const Counter& counter, double perRodHour,
                               double dayVariance) {
    std::vector<RateRow*> tested;
    std::vector<double> p;
    for (RateRow& row : table.rows) {
        const Tally rest{static_cast<double>(table.overall.fish - row.fish),
                         table.overall.rodHours - row.rodHours};
        if (!(row.rodHours > 0.0) || !(rest.rodHours > 1e-9)) {
            continue;
        }
        const double scatter = dispersionOf(counter.daysBeside(row.name), perRodHour, dayVariance);
        const auto compared = compareRates(worthOf(row), worthOf(rest, scatter));
        if (!compared) {
            return std::unexpected(compared.error());
        }
        tested.push_back(&row);
        p.push_back(compared->p);
    }
    // Two rows are each other's rest: that is one test, asked twice.
    const std::vector<double> adjusted = p.size() > 2 ? adjustedByHolm(p) : p;
    for (std::size_t i = 0; i < tested.size(); ++i) {
        tested[i]->pAgainstTheRest = adjusted[i];
    }
    return {};
}

/// What the counts can bear, once they are counted.
base::Result<void> weighRows(RateTable& table, const Counter& counter, base::Progress& progress) {
    const double dayVariance = counter.dayVariance();
    // Half a fish more, so that a water of blanks expects something too.
    const double perRodHour = (table.overall.fish + 0.5) / table.overall.rodHours;
    settleScatter(table.overall, counter.days(), perRodHour, dayVariance);
    for (RateRow& row : table.rows) {
        row.shareOfEffort = row.rodHours / table.overall.rodHours;
        settleScatter(row, counter.daysOf(row.name), perRodHour, dayVariance);
    }
    table.overall.shareOfEffort = 1.0;
    if (auto done = shrinkRows(table, progress); !done) {
        return done;
    }
    return compareRows(table, counter, perRodHour, dayVariance);
}

} // namespace

base::Result<RateTable> countRates(std::span<const GroupedStay> stays, const RateSettings& settings,
                                   base::Progress& progress) {
    if (settings.from && settings.to && *settings.from > *settings.to) {
        return base::fail(ErrorKind::wrongUse, "the first day is after the last", "",
                          "swap the two days");
    }
    Counter counter(settings);
    for (const GroupedStay& part : stays) {
        if (progress.stopAsked()) {
            return std::unexpected(base::cancelled());
        }
        counter.take(part);
    }
    RateTable table;
    table.overall = counter.overall();
    table.effortUnknown = counter.effortUnknown();
    table.days = counter.days().size();
    for (const std::string& name : rowNames(counter, settings)) {
        table.rows.push_back(counter.row(name));
    }
    if (table.overall.rodHours > 0.0) {
        if (const auto done = weighRows(table, counter, progress); !done) {
            return std::unexpected(done.error());
        }
    }
    table.notes = notesOn(table, counter.report(), settings);
    return table;
}

} // namespace rates
