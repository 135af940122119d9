// SPDX-License-Identifier: GPL-3.0-or-later
// The water that is open, and where it is kept. What is made of it: open_water_results.cpp.
#include "app/open_water/open_water.h"

#include "app/open_water/machine_clock.h"
#include "app/open_water/now.h"

#include "core/water/document/swap_parts.h"
#include "core/water/steps/derive.h"

#include <QFileInfo>

namespace open_water {

using base::Result;
using water::Part;
using water::Step;
using water::Water;

namespace {

constexpr int mostUndo = 200;

bool isSameFile(const QString& a, const QString& b) {
    const QString there = QFileInfo(a).canonicalFilePath();
    return !there.isEmpty() && there == QFileInfo(b).canonicalFilePath();
}

void planFromNow(Water& water) {
    water::planFromTomorrow(water, now());
}

} // namespace

OpenWater::OpenWater(QObject* parent) : QObject(parent), water_(std::make_shared<const Water>()) {
    undoStack_.setUndoLimit(mostUndo);
    connect(&keeper_, &Keeper::failed, this, &OpenWater::failed);
    connect(&keeper_, &Keeper::fileMade, this, [this] { emit moved({}); });
    connect(&jobs_, &jobs::JobRunner::finished, this, &OpenWater::tellStopped);
    connect(this, &OpenWater::opened, &follower_, &Follower::watch);
    connect(&follower_, &Follower::isToBeOpenedAgain, this, [this] {
        if (!opening_.isBusy()) {
            readInBackground(path(),
                             [this](const base::Error& error) { follower_.takeFailure(error); });
        }
    });
    connect(&follower_, &Follower::failed, this, &OpenWater::failed);
}

OpenWater::~OpenWater() {
    opening_.cancelAll();
    jobs_.cancelAll();
    keeper_.finish();
}

void OpenWater::keepUnnamedIn(const QString& folder) {
    unnamed_.emplace(folder);
    if (!keeper_.hasFile()) {
        Water fresh = *water_;
        fresh.clock = machineClock();
        planFromNow(fresh);
        water_ = std::make_shared<const Water>(std::move(fresh));
        keeper_.serveUnmade([unnamed = *unnamed_] { return unnamed.make(); });
    }
}

void OpenWater::countNewWatersIn(contours::CountsIn unit) {
    newCountIn_ = unit;
    if (!isOpen()) {
        Water fresh = *water_;
        fresh.settings.countsIn = unit;
        water_ = std::make_shared<const Water>(std::move(fresh));
    }
}

bool OpenWater::isUnnamed() const {
    return unnamed_ && isOpen() && (!keeper_.hasFile() || unnamed_->holds(path()));
}

Result<void> OpenWater::leave() {
    const bool hasPlace = keeper_.hasFile() || unnamed_;
    if (keeper_.finish() || mayUnkeptGo_ || !hasPlace) {
        return {};
    }
    base::Error why = keeper_.whyNot().value_or(base::Error());
    why.what = "the water that is open has changes that are not kept: " + why.what;
    why.whatToDo = "save it in another place first";
    return std::unexpected(why);
}

Result<void> OpenWater::open(const QString& path) {
    base::Progress silent;
    auto file = readWaterFile(path.toStdString(), silent);
    if (!file) {
        return std::unexpected(file.error());
    }
    if (auto left = leave(); !left) {
        return left;
    }
    takeFile(std::move(*file));
    return {};
}

void OpenWater::startOpening(const QString& path) {
    if (!isReadOnly() && isSameFile(path, this->path())) {
        emit happened(tr("%1 is open already.").arg(path));
        emit openingEnded();
        return;
    }
    readInBackground(path, [this](const base::Error& error) {
        if (error.kind != base::ErrorKind::cancelled) {
            emit failed(error);
        }
    });
}

void OpenWater::readInBackground(const QString& path,
                                 std::function<void(const base::Error&)> fail) {
    const auto look = [this, waters = waters_](const FirstLook& first) {
        // In the window's thread, and not over a water that somebody is at work on.
        QMetaObject::invokeMethod(this, [this, waters, first] {
            if (waters == waters_ && opening_.isBusy() && !isOpen()) {
                emit glimpsed(first);
            }
        });
    };
    const auto work = [path = path.toStdString(), look](base::Progress& progress) {
        return readWaterFile(path, progress, look);
    };
    opening_.start<WaterFile>(
        tr("Opening the water"), work,
        [this, waters = waters_, fail = std::move(fail)](Result<WaterFile> file) {
            // Else another was opened meanwhile, and is not put aside.
            if (waters == waters_) {
                if (const auto left = file ? leave() : Result<void>(); !left) {
                    fail(left.error());
                } else if (file) {
                    takeFile(std::move(*file));
                } else {
                    fail(file.error());
                }
            }
            emit openingEnded();
        });
}

Result<void> OpenWater::create(const QString& path, const QString& name) {
    auto made = store::create(path.toStdString());
    if (!made) {
        return std::unexpected(made.error());
    }
    Water fresh;
    fresh.name = name.toStdString();
    fresh.clock = machineClock();
    fresh.settings.countsIn = newCountIn_;
    base::Progress silent;
    if (auto saved = (*made)->save(fresh, water::allParts, silent); !saved) {
        return saved;
    }
    if (auto left = leave(); !left) {
        return left;
    }
    takeFile({std::move(*made), std::move(fresh), {}});
    return {};
}

void OpenWater::takeFile(WaterFile file) {
    jobs_.cancelAll();
    ++waters_;
    tell(awaitingPlan_, std::unexpected(base::cancelled()));
    tell(awaitingMap_, std::unexpected(base::cancelled()));
    mayUnkeptGo_ = false;
    undoStack_.clear();
    keeper_.serve(std::move(file.store), file.kept.drawn);
    planFromNow(file.water);
    water_ = std::make_shared<const Water>(std::move(file.water));
    recent_.forget();
    derived_ = std::move(file.kept);
    if (isCurrent(Step::draw)) {
        recent_.remember(derived_);
    }
    planned_.reset();
    planBasis_ = {};
    whyNoPlan_.reset();
    emit opened();
    if (water_->frame && !water_->days.empty()) {
        deriveUpTo(Step::sections);
    } else if (water_->frame && !water_->shoreline.empty()) {
        deriveUpTo(Step::reduce);
    }
}

void OpenWater::moveTo(const QString& path) {
    // Asked when its turn has come: until then the file of an unnamed water may have been made.
    const auto left = std::make_shared<std::pair<QString, bool>>();
    keeper_.moveTo(
        path,
        [this, left] {
            *left = {this->path(), isUnnamed()};
            return foundNow();
        },
        [this, left](const Result<void>& moved) {
            if (!moved) {
                emit failed(moved.error());
                return;
            }
            const auto& [from, wasUnnamed] = *left;
            if (wasUnnamed && !from.isEmpty()) {
                UnnamedWaters::remove(from);
            }
            emit OpenWater::moved(from);
        });
}

void OpenWater::swapParts(Water& other, const std::vector<Part>& parts) {
    auto changedWater = std::make_shared<Water>(*water_);
    water::swapParts(*changedWater, other, parts);
    water_ = std::move(changedWater);
    whyNoPlan_.reset();
    mayUnkeptGo_ = false; // Said of what was there, not of what comes now.
    keeper_.keep(water_, parts);
    emit changed({parts.begin(), parts.end()});
}

Found OpenWater::foundNow() const {
    // Whoever looks into the file with another program sees nothing that is older than the water.
    return {water_, isCurrent(Step::draw) ? derived_ : water::withoutDrawing(derived_),
            isPlanCurrent() ? planned_->marks : std::vector<marks::Mark>()};
}

void OpenWater::keepFound() {
    keeper_.keepFound(foundNow());
}

} // namespace open_water
