// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rates/rate_notes.h"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace rates {

namespace {

constexpr double rarelyByChance = 0.05;
/// With fewer fish to be expected than this, a blank says next to nothing: it comes by chance once
/// in e^-1.
constexpr double fishToTell = 1.0;
constexpr std::size_t namesListed = 6;
constexpr int fishForAShare = 5;
constexpr double largeShare = 0.4;

std::string listed(std::vector<std::string> names) {
    const std::size_t more = names.size() > namesListed ? names.size() - namesListed : 0;
    names.resize(names.size() - more);
    const std::string text = fmt::format("{}", fmt::join(names, ", "));
    return more == 0 ? text : fmt::format("{} and {} more", text, more);
}

void addComparison(const RateTable& table, const std::string& word,
                   std::vector<std::string>& notes) {
    if (!table.overall.rate) {
        return;
    }
    bool anyTested = false;
    bool anyDiffers = false;
    for (const RateRow& row : table.rows) {
        if (!row.pAgainstTheRest) {
            continue;
        }
        anyTested = true;
        if (*row.pAgainstTheRest >= rarelyByChance) {
            continue;
        }
        anyDiffers = true;
        const bool isBetter =
            row.rate && row.rate->per10RodHours > table.overall.rate->per10RodHours;
        notes.push_back(
            fmt::format("{} brought {} than the rest, by more than chance would make it.", row.name,
                        isBetter ? "more" : "less"));
    }
    if (anyTested && !anyDiffers) {
        notes.push_back(
            fmt::format("No {} differs from the rest more than chance would make it.", word));
    }
}

void addLittleTried(const RateTable& table, const std::string& word,
                    std::vector<std::string>& notes) {
    if (table.overall.fish == 0 || !table.overall.rate) {
        return;
    }
    std::vector<std::string> names;
    for (const RateRow& row : table.rows) {
        const double expected = table.overall.rate->per10RodHours / 10.0 * row.rodHours;
        if (expected < fishToTell) {
            names.push_back(row.name);
        }
    }
    if (!names.empty()) {
        notes.push_back(fmt::format(
            "Too little tried to tell, less than one fish to be expected: {} ({} of {} {}s).",
            listed(names), names.size(), table.rows.size(), word));
    }
}

void addWithoutEffort(const RateTable& table, std::vector<std::string>& notes) {
    for (const RateRow& row : table.rows) {
        if (row.fish > 0 && !(row.rodHours > 0.0)) {
            notes.push_back(fmt::format("Fish under \"{}\" have no effort of their own: they count "
                                        "in the whole only.",
                                        row.name));
        }
    }
}

} // namespace

std::vector<std::string> notesOn(const RateTable& table, const CountingReport& report,
                                 const RateSettings& settings) {
    std::vector<std::string> notes;
    if (table.effortUnknown > 0) {
        notes.push_back(fmt::format("{} {} with {} fish left out: how many rods were out, or for "
                                    "how long, is not noted.",
                                    table.effortUnknown,
                                    table.effortUnknown == 1 ? "stay" : "stays",
                                    report.fishWithoutEffort));
    }
    if (table.overall.stays == 0) {
        if (table.effortUnknown == 0) {
            notes.emplace_back("No stay was logged in this time.");
        }
        return notes;
    }
    if (!(table.overall.rodHours > 0.0)) {
        notes.emplace_back("The stays have no length: enter when each began and ended.");
        return notes;
    }
    if (table.overall.fish == 0) {
        notes.emplace_back("No fish counted: the upper limits alone say something.");
    }
    addComparison(table, settings.rowWord, notes);
    addLittleTried(table, settings.rowWord, notes);
    addWithoutEffort(table, notes);
    if (table.overall.fish >= fishForAShare &&
        report.mostInOneStay > largeShare * table.overall.fish) {
        notes.push_back(
            fmt::format("{} of {} fish came in one stay: one good hour can make a rate.",
                        report.mostInOneStay, table.overall.fish));
    }
    if (report.withoutWeight > 0) {
        notes.push_back(
            fmt::format("Fish without a weight are left out: {}.", report.withoutWeight));
    }
    if (!settings.species.empty() || settings.leastWeight) {
        notes.emplace_back("Runs count every take, since a lost one has no species or weight.");
    }
    return notes;
}

} // namespace rates
