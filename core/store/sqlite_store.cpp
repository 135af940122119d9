// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/sqlite_store.h"

#include "core/store/check_file.h"
#include "core/store/keep_drawing.h"
#include "core/store/keep_found.h"
#include "core/store/keep_parts.h"
#include "core/store/orphan_journal.h"
#include "core/store/results/keep_results.h"
#include "core/store/spatial_index.h"
#include "core/store/transaction.h"

#include <algorithm>
#include <utility>

namespace store {

SqliteStore::SqliteStore(std::unique_ptr<Connection> connection, std::unique_ptr<Connection> watch,
                         Opening opening, WriteRight right, SaveMark known)
    : right_(std::move(right)), connection_(std::move(connection)), watch_(std::move(watch)),
      opening_(opening), known_(std::move(known)) {}

SqliteStore::~SqliteStore() {
    if (opening_ != Opening::created || !hasFailed_ || hasSaved_ || connection_->hasMoved()) {
        return;
    }
    // Nobody wants a water that holds nothing, and it would keep its name from being used.
    const std::filesystem::path empty = path();
    watch_.reset();
    connection_.reset();
    std::error_code ignored;
    std::filesystem::remove(empty, ignored);
    removeJournalOf(empty);
}

bool SqliteStore::isReadOnly() const {
    const std::lock_guard lock(mutex_);
    return !right_.isGranted();
}

std::optional<Owner> SqliteStore::owner() const {
    const std::lock_guard lock(mutex_);
    return right_.owner();
}

base::Result<bool> SqliteStore::hasChanged() {
    if (watch_->hasMoved()) {
        return base::fail(base::ErrorKind::unusableInput,
                          "the water file was moved or deleted while it was open", path().string(),
                          "open it where it is now");
    }
    // A save of our own may be done between the two looks.
    const SaveMark before = known();
    const SaveMark found = SaveMark::in(*watch_);
    if (auto outcome = watch_->outcome(); !outcome) {
        if (outcome.error().kind == base::ErrorKind::waterInUse) {
            return false; // It is being saved: what that makes of it is told by the next question.
        }
        return std::unexpected(std::move(outcome.error()));
    }
    return found != before && !isOurs(found);
}

SaveMark SqliteStore::known() const {
    const std::lock_guard lock(mutex_);
    return known_;
}

bool SqliteStore::isOurs(const SaveMark& found) const {
    const std::lock_guard lock(mutex_);
    return found == known_ || (found == tried_ && tried_ != SaveMark());
}

base::Result<void> SqliteStore::saveAtOnce(const std::function<void()>& keep) {
    auto saved = saveOnTop(keep);
    (saved ? hasSaved_ : hasFailed_) = true;
    if (!saved) {
        logInFile_.reset(); // whether it is there only the file can tell
    }
    return saved;
}

void SqliteStore::noteTried(const SaveMark& mark) {
    const std::lock_guard lock(mutex_);
    tried_ = mark;
}

void SqliteStore::noteKnown(const SaveMark& mark) {
    const std::lock_guard lock(mutex_);
    known_ = mark;
}

base::Result<void> SqliteStore::claim() {
    const std::lock_guard lock(mutex_);
    return right_.claim();
}

base::Result<void> SqliteStore::saveOnTop(const std::function<void()>& keep) {
    if (auto claimed = claim(); !claimed) {
        return claimed;
    }
    Transaction transaction(*connection_);
    const SaveMark found = SaveMark::in(*connection_);
    if (connection_->isFine() && !isOurs(found)) {
        connection_->fail({base::ErrorKind::waterChanged,
                           "another program has saved this water since it was read; nothing of "
                           "that was overwritten",
                           path().string(), "open the water again and make the change there"});
    }
    const SaveMark mark = found.next();
    if (connection_->isFine()) {
        keep();
        followChanges(*connection_);
    }
    mark.put(*connection_);
    noteTried(mark);
    auto committed = transaction.commit();
    if (committed) {
        noteKnown(mark);
    }
    return committed;
}

void SqliteStore::keepPart(const water::Water& water, water::Part part,
                           const reduction::ReducedSurvey* reduced, base::Progress& progress) {
    switch (part) {
    case water::Part::facts:
        return keepFacts(*connection_, water);
    case water::Part::shoreline:
        return keepShoreline(*connection_, water);
    case water::Part::days:
        return keepDays(*connection_, water, reduced, progress);
    case water::Part::leadLine:
        return keepLeadLine(*connection_, water);
    case water::Part::weedNotes:
        return keepWeedNotes(*connection_, water);
    case water::Part::houseRules:
        return keepHouseRules(*connection_, water);
    case water::Part::sections:
        keepSectionNames(*connection_, water);
        return keepSectionChanges(*connection_, water);
    case water::Part::numbering:
        return keepNumbering(*connection_, water);
    case water::Part::plan:
        keepPlan(*connection_, water);
        return keepWishes(*connection_, water);
    case water::Part::sheets:
        return keepSheets(*connection_, water);
    case water::Part::log:
        return logInFile_ ? keepLogChanges(*connection_, water, *logInFile_)
                          : keepLog(*connection_, water);
    }
}

base::Error SqliteStore::asRead(base::Error error) const {
    if (opening_ != Opening::newer || error.kind != base::ErrorKind::damagedWater) {
        return error;
    }
    return {base::ErrorKind::unusableInput,
            "a newer version of Meremark keeps this water file in a way that this one cannot read",
            path().string(), "open it with that version; nothing was changed"};
}

base::Result<water::Water> SqliteStore::loadShore() {
    const Reading reading(*connection_);
    water::Water water;
    recallFacts(*connection_, water);
    recallShoreline(*connection_, water);
    if (auto outcome = connection_->outcome(); !outcome) {
        return std::unexpected(asRead(std::move(outcome.error())));
    }
    return water;
}

base::Result<water::Water> SqliteStore::load(base::Progress& progress) {
    progress.begin("reading the water file");
    const Reading reading(*connection_);
    const SaveMark found = SaveMark::in(*connection_);
    water::Water water;
    recallFacts(*connection_, water);
    recallShoreline(*connection_, water);
    recallDays(*connection_, water, progress);
    for (const auto recall : recallsOfTheRest) {
        recall(*connection_, water);
    }
    if (auto outcome = connection_->outcome(); !outcome) {
        return std::unexpected(asRead(std::move(outcome.error())));
    }
    noteKnown(found);
    logInFile_ = water.log;
    return water;
}

base::Result<void> SqliteStore::save(const water::Water& water, std::span<const water::Part> parts,
                                     base::Progress& progress) {
    progress.begin("saving the water file");
    auto saved = saveAtOnce([&] {
        for (const water::Part part : parts) {
            keepPart(water, part, nullptr, progress);
        }
        if (progress.stopAsked()) {
            connection_->fail(base::cancelled());
        }
    });
    if (saved && std::ranges::find(parts, water::Part::log) != parts.end()) {
        logInFile_ = water.log;
    }
    return saved;
}

base::Result<void> SqliteStore::saveDrawing(const surface::DrawnWater& drawn,
                                            const geo::WaterFrame& frame, water::Stamp stamp) {
    return saveAtOnce([&] { keepDrawing(*connection_, drawn, frame, stamp); });
}

base::Result<std::optional<KeptDrawing>> SqliteStore::loadDrawing(const geo::Outline& outline) {
    const Reading reading(*connection_);
    auto kept = recallDrawing(*connection_, outline);
    if (auto outcome = connection_->outcome(); !outcome) {
        if (outcome.error().kind == base::ErrorKind::damagedWater) {
            return std::nullopt; // A drawing can be made again; check() tells of it.
        }
        return std::unexpected(std::move(outcome.error()));
    }
    return kept;
}

base::Result<void> SqliteStore::loadResults(const water::Water& water,
                                            std::span<const water::Step> steps,
                                            water::Derived& derived) {
    const Reading reading(*connection_);
    recallResults(*connection_, water, water::Stamps::of(water), steps, derived);
    return connection_->outcome();
}

base::Result<void> SqliteStore::saveFound(const water::Water& water, const water::Derived& found,
                                          const marks::ToldMarks& told, base::Progress& progress) {
    progress.begin("saving what was found");
    return saveAtOnce([&] { keepFound(*connection_, water, found, told, progress); });
}

base::Result<void> SqliteStore::saveWhole(const water::Water& water, const water::Derived& found,
                                          const marks::ToldMarks& told, base::Progress& progress) {
    progress.begin("saving the water file");
    auto saved = saveAtOnce([&] {
        for (const water::Part part : water::allParts) {
            keepPart(water, part, found.checked ? &found.checked->survey : nullptr, progress);
        }
        const auto stamp = found.stamps.find(water::Step::draw);
        if (water.frame && found.drawn && stamp != found.stamps.end()) {
            keepDrawing(*connection_, *found.drawn, *water.frame, stamp->second);
        }
        keepFound(*connection_, water, found, told, progress);
        if (progress.stopAsked()) {
            connection_->fail(base::cancelled());
        }
    });
    if (saved) {
        logInFile_ = water.log;
    }
    return saved;
}

base::Result<CheckReport> SqliteStore::check(base::Progress& progress) {
    return checkFile(*connection_, progress);
}

} // namespace store
