// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/check_file.h"

#include "core/store/geopackage.h"
#include "core/store/keep_drawing.h"
#include "core/store/keep_parts.h"
#include "core/store/statement.h"
#include "core/store/transaction.h"
#include "core/water/steps/problems.h"

#include <set>

#include <fmt/format.h>

namespace store {

namespace {

constexpr std::size_t mostFaults = 20; ///< More would tell nobody more.

void note(CheckReport& report, std::string fault) {
    if (report.faults.size() < mostFaults) {
        report.faults.push_back(std::move(fault));
    }
}

/// Takes what the connection has failed with, if anything, as a fault of the file.
void noteFailure(Connection& connection, CheckReport& report) {
    if (const auto outcome = connection.outcome(); !outcome) {
        note(report, outcome.error().what);
    }
}

void checkPages(Connection& connection, CheckReport& report) {
    Statement pages(connection, fmt::format("PRAGMA integrity_check({})", mostFaults));
    pages.ask();
    while (pages.next()) {
        if (const std::string answer = pages.text(0); answer != "ok") {
            note(report, answer);
        }
    }
    Statement links(connection, "PRAGMA foreign_key_check");
    links.ask();
    std::set<std::string> loose;
    while (links.next()) {
        loose.insert(links.text(0));
    }
    loose.erase("fish"); // Of these two it is said below what they belong to.
    loose.erase("soundings");
    for (const std::string& table : loose) {
        note(report, fmt::format("a row of {} points to nothing", table));
    }
    Statement numbers(connection, "SELECT (SELECT application_id FROM pragma_application_id), "
                                  "(SELECT user_version FROM pragma_user_version)");
    numbers.ask();
    if (numbers.next() &&
        (numbers.wholeNumber(0) != geoPackageId || numbers.wholeNumber(1) != geoPackageVersion)) {
        note(report, "the file no longer says that it is a GeoPackage 1.3");
    }
    noteFailure(connection, report);
}

/// Every layer that the table of contents names must be there.
void checkContents(Connection& connection, CheckReport& report) {
    Statement rows(connection, "SELECT table_name FROM gpkg_contents WHERE table_name NOT IN "
                               "(SELECT name FROM sqlite_master WHERE type IN ('table','view'))");
    rows.ask();
    while (rows.next()) {
        note(report, fmt::format("the layer {} is gone", rows.text(0)));
    }
    noteFailure(connection, report);
}

std::size_t countOf(Connection& connection, std::string_view sql) {
    Statement count(connection, sql);
    count.ask();
    return count.next() ? static_cast<std::size_t>(count.wholeNumber(0)) : 0;
}

void checkLog(const water::Water& water, CheckReport& report) {
    for (const logbook::Stay& stay : water.log) {
        if (stay.end < stay.start) {
            note(report,
                 fmt::format("the stay of {} ends before it starts", units::isoText(stay.start)));
        }
        if (stay.rods && *stay.rods < 1) {
            note(report, fmt::format("the stay of {} has no rod", units::isoText(stay.start)));
        }
    }
}

void checkSoundings(Connection& connection, CheckReport& report) {
    const std::size_t lost = countOf(connection, "SELECT count(*) FROM soundings WHERE day_id NOT "
                                                 "IN (SELECT id FROM survey_days)");
    if (lost > 0) {
        note(report, fmt::format("{} soundings belong to no survey day", lost));
    }
    noteFailure(connection, report);
}

void checkDrawing(Connection& connection, CheckReport& report) {
    report.hasDrawing = countOf(connection, "SELECT count(*) FROM drawing") > 0;
    if (report.hasDrawing && !isDrawingWhole(connection)) {
        note(report, "the kept drawing is not whole; it will be made again");
    }
    noteFailure(connection, report);
}

} // namespace

base::Result<CheckReport> checkFile(Connection& connection, base::Progress& progress) {
    CheckReport report;
    progress.begin("checking the water file");
    const Reading reading(connection);
    if (auto started = connection.outcome(); !started) {
        return std::unexpected(started.error());
    }
    checkPages(connection, report);
    checkContents(connection, report);
    water::Water water;
    recallFacts(connection, water);
    noteFailure(connection, report);
    recallShoreline(connection, water);
    noteFailure(connection, report);
    recallDays(connection, water, progress);
    if (progress.stopAsked()) {
        static_cast<void>(connection.outcome());
        return std::unexpected(base::cancelled());
    }
    noteFailure(connection, report);
    for (const auto recall : recallsOfTheRest) {
        recall(connection, water);
        noteFailure(connection, report);
    }
    checkLog(water, report);
    checkSoundings(connection, report);
    checkDrawing(connection, report);
    report.surveyDays = water.days.size();
    for (const soundings::SurveyDay& day : water.days) {
        report.soundings += day.soundings.size();
    }
    report.stays = water.log.size();
    for (const logbook::Stay& stay : water.log) {
        report.fish += stay.runs.size();
    }
    if (report.isWhole()) {
        report.problems = water::problemsIn(water);
    }
    return report;
}

} // namespace store
