// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/open_water/open_water.h"

#include "core/water/derive.h"
#include "core/water/plan_day.h"
#include "core/water/swap_parts.h"

#include <algorithm>

namespace open_water {

using jobs::JobRunner;
using water::Derived;
using water::Part;
using water::Step;
using water::Water;

namespace {

constexpr int mostUndo = 200;

/// Derives up to a step; what is already there is kept.
JobRunner::Work<Derived> deriving(std::shared_ptr<const Water> water, Derived before, Step step) {
    return [water = std::move(water), before = std::move(before), step](base::Progress& progress) {
        return water::derive(*water, before, step, progress);
    };
}

} // namespace

OpenWater::OpenWater(QObject* parent) : QObject(parent), water_(std::make_shared<const Water>()) {
    undoStack_.setUndoLimit(mostUndo);
}

OpenWater::~OpenWater() {
    close();
}

void OpenWater::close() {
    jobs_.cancelAll();
    finishKeeping();
    undoStack_.clear();
    store_.reset();
}

bool OpenWater::isReadOnly() const {
    return store_ && store_->isReadOnly();
}

QString OpenWater::path() const {
    return store_ ? QString::fromStdString(store_->path().string()) : QString();
}

base::Result<void> OpenWater::open(const QString& path) {
    auto opened = store::open(path.toStdString());
    if (!opened) {
        return std::unexpected(opened.error());
    }
    base::Progress silent;
    auto loaded = (*opened)->load(silent);
    if (!loaded) {
        return std::unexpected(loaded.error());
    }
    takeStore(std::move(*opened), std::move(*loaded));
    return {};
}

base::Result<void> OpenWater::create(const QString& path, const QString& name) {
    auto made = store::create(path.toStdString());
    if (!made) {
        return std::unexpected(made.error());
    }
    Water fresh;
    fresh.name = name.toStdString();
    base::Progress silent;
    if (auto saved = (*made)->save(fresh, water::allParts, silent); !saved) {
        return saved;
    }
    takeStore(std::move(*made), std::move(fresh));
    return {};
}

void OpenWater::takeStore(std::unique_ptr<store::WaterStore> store, Water water) {
    close();
    store_ = std::move(store);
    water::planFromTomorrow(
        water, std::chrono::floor<std::chrono::milliseconds>(std::chrono::system_clock::now()));
    water_ = std::make_shared<const Water>(std::move(water));
    derived_ = {};
    recent_.forget();
    planned_.reset();
    planIsStale_ = true;
    drawingKept_.reset();
    loadKeptDrawing();
    emit opened();
    if (water_->frame && !water_->days.empty()) {
        deriveUpTo(Step::sections);
    } else if (water_->frame && !water_->shoreline.empty()) {
        deriveUpTo(Step::reduce);
    }
}

void OpenWater::loadKeptDrawing() {
    if (!water_->frame || water_->shoreline.empty()) {
        return;
    }
    const auto outline = geo::Outline::make(water_->shoreline, *water_->frame);
    if (!outline) {
        return;
    }
    auto kept = store_->loadDrawing(*outline);
    if (kept && *kept) {
        derived_ = water::withKeptDrawing(*water_, std::move((*kept)->drawn), (*kept)->stamp);
        drawingKept_ = derived_.drawn;
        recent_.remember(derived_);
    }
}

bool OpenWater::isCurrent(Step step) const {
    return water_->frame && derived_.isCurrent(step, water::stampOf(*water_, step));
}

void OpenWater::deriveUpTo(Step step) {
    if (water_->frame) {
        startDeriving(recent_.nearestTo(*water_), step);
    }
}

void OpenWater::drawAfresh() {
    if (water_->frame) {
        startDeriving(water::withoutDrawing(derived_), Step::sections);
    }
}

void OpenWater::startDeriving(Derived before, Step step) {
    jobs_.start<Derived>(tr("Drawing the water"), deriving(water_, std::move(before), step),
                         [this, step, from = water_](base::Result<Derived> made) {
                             if (!made) {
                                 if (made.error().kind != base::ErrorKind::cancelled) {
                                     emit failed(made.error());
                                 }
                                 return;
                             }
                             planIsStale_ = true;
                             takeDerived(std::move(*made));
                             // Undone and done again while it ran: what came home was made from
                             // another water.
                             if (from != water_ && !isCurrent(step)) {
                                 deriveUpTo(step);
                             }
                         });
}

void OpenWater::takeDerived(Derived derived) {
    derived_ = std::move(derived);
    recent_.remember(derived_);
    keepFound();
    emit derivedChanged();
}

void OpenWater::planTomorrow() {
    using Both = std::pair<Derived, std::shared_ptr<const water::PlannedDay>>;
    const auto work = [water = water_, before = recent_.nearestTo(*water_)](
                          base::Progress& progress) -> base::Result<Both> {
        auto derived = water::derive(*water, before, Step::sections, progress);
        if (!derived) {
            return std::unexpected(derived.error());
        }
        auto planned = water::planDay(*water, *derived, water->plan, progress);
        if (!planned) {
            return std::unexpected(planned.error());
        }
        return Both{std::move(*derived),
                    std::make_shared<const water::PlannedDay>(std::move(*planned))};
    };
    jobs_.start<Both>(tr("Working out tomorrow"), work, [this](base::Result<Both> made) {
        if (!made) {
            if (made.error().kind != base::ErrorKind::cancelled) {
                emit failed(made.error());
            }
            return;
        }
        planned_ = std::move(made->second);
        planIsStale_ = false;
        takeDerived(std::move(made->first));
        emit plannedChanged();
    });
}

void OpenWater::swapParts(Water& other, const std::vector<Part>& parts) {
    auto changedWater = std::make_shared<Water>(*water_);
    water::swapParts(*changedWater, other, parts);
    water_ = std::move(changedWater);
    planIsStale_ = true;
    keep(parts);
    emit changed({parts.begin(), parts.end()});
}

void OpenWater::keep(const std::vector<Part>& parts) {
    if (!store_) {
        return;
    }
    const auto work = [store = store_, water = water_, parts](base::Progress& progress) {
        return store->save(*water, parts, progress);
    };
    keeping_.start<void>(
        tr("Keeping the change"), work,
        [this](base::Result<void> kept) {
            if (!kept) {
                emit failed(kept.error());
            }
        },
        JobRunner::Earlier::finished);
}

void OpenWater::keepFound() {
    if (!store_ || store_->isReadOnly()) {
        return;
    }
    const bool isNewDrawing = derived_.drawn && derived_.drawn != drawingKept_;
    const water::Stamp stamp = isNewDrawing ? derived_.stamps.at(Step::draw) : water::Stamp();
    drawingKept_ = derived_.drawn;
    const auto work = [store = store_, water = water_, derived = derived_, planned = planned_,
                       isNewDrawing, stamp](base::Progress& progress) -> base::Result<void> {
        if (isNewDrawing) {
            if (auto kept = store->saveDrawing(*derived.drawn, *water->frame, stamp); !kept) {
                return kept;
            }
        }
        return store->saveFound(*water, derived,
                                planned ? planned->marks : std::vector<marks::Mark>{}, progress);
    };
    keeping_.start<void>(
        tr("Keeping the drawing"), work,
        [this](base::Result<void> kept) {
            if (!kept && kept.error().kind != base::ErrorKind::cancelled) {
                emit failed(kept.error());
            }
        },
        JobRunner::Earlier::finished);
}

void OpenWater::finishKeeping() {
    keeping_.finishAll();
}

} // namespace open_water
