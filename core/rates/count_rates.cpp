// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rates/count_rates.h"

#include "core/base/number_text.h"
#include "core/rates/compare_rates.h"
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

    [[nodiscard]] bool takes(const Stay& stay) const {
        const units::Day day = settings_.clock.dayOf(stay.start);
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
        Group& group = groups_[part.group];
        group.row.rodHours += part.rodHours;
        overall_.rodHours += part.rodHours;
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
            ++fishOfStay;
            ++fishHere;
        }
    }

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
    struct Group {
        RateRow row;
        FishByStay fishOf;
    };

    static RateRow settled(RateRow row, const FishByStay& fishOf) {
        row.stays = static_cast<int>(fishOf.size());
        row.blanks = static_cast<int>(
            std::ranges::count_if(fishOf, [](const auto& entry) { return entry.second == 0; }));
        row.rate = rateOf(row.tally());
        return row;
    }

    Sieve sieve_;
    std::map<std::string, Group> groups_;
    FishByStay fishOf_;
    RateRow overall_;
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

base::Result<void> shrinkRows(RateTable& table, base::Progress& progress) {
    std::vector<Tally> tallies;
    for (const RateRow& row : table.rows) {
        tallies.push_back(row.tally());
    }
    const auto shrunk = shrinkRates(tallies, ShrinkSettings(), progress);
    if (!shrunk) {
        return std::unexpected(shrunk.error());
    }
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        table.rows[i].shrunk = shrunk->beliefs[i].rate();
        table.rows[i].shrunkWidth = shrunk->beliefs[i].relativeWidth();
    }
    const Belief untried = beliefAfter(shrunk->prior, Tally{});
    table.untried = untried.rate();
    table.untriedWidth = untried.relativeWidth();
    // Jeffreys' prior for a Poisson mean: half a fish in no time.
    const Belief whole = beliefAfter(GammaPrior{0.5, 0.0}, table.overall.tally());
    table.overall.shrunk = whole.rate();
    table.overall.shrunkWidth = whole.relativeWidth();
    return {};
}

base::Result<void> compareRows(RateTable& table) {
    std::vector<RateRow*> tested;
    std::vector<double> p;
    for (RateRow& row : table.rows) {
        const Tally rest{table.overall.fish - row.fish, table.overall.rodHours - row.rodHours};
        if (!(row.rodHours > 0.0) || !(rest.rodHours > 1e-9)) {
            continue;
        }
        const auto compared = compareRates(row.tally(), rest);
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
    for (const std::string& name : rowNames(counter, settings)) {
        table.rows.push_back(counter.row(name));
    }
    if (table.overall.rodHours > 0.0) {
        for (RateRow& row : table.rows) {
            row.shareOfEffort = row.rodHours / table.overall.rodHours;
        }
        table.overall.shareOfEffort = 1.0;
        if (const auto done = shrinkRows(table, progress); !done) {
            return std::unexpected(done.error());
        }
        if (const auto done = compareRows(table); !done) {
            return std::unexpected(done.error());
        }
    }
    table.notes = notesOn(table, counter.report(), settings);
    return table;
}

} // namespace rates
