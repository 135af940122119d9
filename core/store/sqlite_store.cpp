// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/sqlite_store.h"

#include "core/store/check_file.h"
#include "core/store/keep_drawing.h"
#include "core/store/keep_found.h"
#include "core/store/keep_parts.h"
#include "core/store/transaction.h"

#include <algorithm>
#include <utility>

namespace store {

namespace {

void keepPart(Connection& connection, const water::Water& water, water::Part part,
              const reduction::ReducedSurvey* reduced, base::Progress& progress) {
    switch (part) {
    case water::Part::facts:
        return keepFacts(connection, water);
    case water::Part::shoreline:
        return keepShoreline(connection, water);
    case water::Part::days:
        return keepDays(connection, water, reduced, progress);
    case water::Part::leadLine:
        return keepLeadLine(connection, water);
    case water::Part::weedNotes:
        return keepWeedNotes(connection, water);
    case water::Part::houseRules:
        return keepHouseRules(connection, water);
    case water::Part::sections:
        keepSectionNames(connection, water);
        return keepSectionChanges(connection, water);
    case water::Part::plan:
        return keepPlan(connection, water);
    case water::Part::log:
        return keepLog(connection, water);
    }
}

} // namespace

SqliteStore::SqliteStore(std::unique_ptr<Connection> connection, Opening opening)
    : connection_(std::move(connection)), opening_(opening) {}

base::Result<water::Water> SqliteStore::load(base::Progress& progress) {
    progress.begin("reading the water file");
    const Reading reading(*connection_);
    water::Water water;
    recallFacts(*connection_, water);
    recallShoreline(*connection_, water);
    recallDays(*connection_, water, progress);
    for (const auto recall : {recallLeadLine, recallWeedNotes, recallHouseRules, recallSectionNames,
                              recallSectionChanges, recallPlan, recallLog}) {
        recall(*connection_, water);
    }
    if (auto outcome = connection_->outcome(); !outcome) {
        return std::unexpected(std::move(outcome.error()));
    }
    return water;
}

base::Result<void> SqliteStore::save(const water::Water& water, std::span<const water::Part> parts,
                                     base::Progress& progress) {
    progress.begin("saving the water file");
    Transaction transaction(*connection_);
    for (const water::Part part : parts) {
        keepPart(*connection_, water, part, nullptr, progress);
    }
    if (progress.stopAsked()) {
        connection_->fail(base::cancelled());
    }
    return transaction.commit();
}

base::Result<void> SqliteStore::saveDrawing(const surface::DrawnWater& drawn,
                                            const geo::WaterFrame& frame, water::Stamp stamp) {
    Transaction transaction(*connection_);
    keepDrawing(*connection_, drawn, frame, stamp);
    return transaction.commit();
}

base::Result<std::optional<KeptDrawing>> SqliteStore::loadDrawing(const geo::Outline& outline) {
    const Reading reading(*connection_);
    auto kept = recallDrawing(*connection_, outline);
    if (auto outcome = connection_->outcome(); !outcome) {
        return std::unexpected(std::move(outcome.error()));
    }
    return kept;
}

base::Result<void> SqliteStore::saveFound(const water::Water& water, const water::Derived& found,
                                          std::span<const marks::Mark> marks,
                                          base::Progress& progress) {
    progress.begin("saving what was found");
    Transaction transaction(*connection_);
    keepFound(*connection_, water, found, marks, progress);
    return transaction.commit();
}

base::Result<void> SqliteStore::saveWhole(const water::Water& water, const water::Derived& found,
                                          std::span<const marks::Mark> marks,
                                          base::Progress& progress) {
    progress.begin("saving the water file");
    Transaction transaction(*connection_);
    for (const water::Part part : water::allParts) {
        keepPart(*connection_, water, part, found.checked ? &found.checked->survey : nullptr,
                 progress);
    }
    const auto stamp = found.stamps.find(water::Step::draw);
    if (water.frame && found.drawn && stamp != found.stamps.end()) {
        keepDrawing(*connection_, *found.drawn, *water.frame, stamp->second);
    }
    keepFound(*connection_, water, found, marks, progress);
    if (progress.stopAsked()) {
        connection_->fail(base::cancelled());
    }
    return transaction.commit();
}

base::Result<CheckReport> SqliteStore::check(base::Progress& progress) {
    return checkFile(*connection_, progress);
}

} // namespace store
