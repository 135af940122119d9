// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/open_water/keeper.h"

#include "app/wording/reasons.h"

#include <filesystem>
#include <utility>

namespace open_water {

using base::Error;
using base::ErrorKind;
using base::Result;
using water::Part;

namespace {

/// Short enough for a disk that is full for a minute, long enough not to be noticed.
constexpr std::chrono::seconds retryAfter{5};

} // namespace

Keeper::Keeper(QObject* parent) : QObject(parent) {
    retry_.setSingleShot(true);
    retry_.setInterval(retryAfter);
    connect(&retry_, &QTimer::timeout, this, &Keeper::saveNext);
}

QString Keeper::path() const {
    return store_ ? QString::fromStdString(store_->path().string()) : QString();
}

void Keeper::start(std::shared_ptr<store::WaterStore> store) {
    ++served_;
    store_ = std::move(store);
    isReadOnly_ = store_ && store_->isReadOnly();
    move_.reset();
    maker_ = nullptr;
    latest_.reset();
    unkept_.clear();
    touchedSince_.clear();
    whyNot_.reset();
    found_.reset();
    hasFoundFailed_ = false;
    drawingKept_.reset();
    retry_.stop();
}

void Keeper::serve(Store store, std::shared_ptr<const surface::DrawnWater> drawing) {
    start(std::move(store));
    drawingKept_ = std::move(drawing);
    emit changed();
}

void Keeper::serveUnmade(Maker maker) {
    start(nullptr);
    maker_ = std::move(maker);
    emit changed();
}

void Keeper::keep(std::shared_ptr<const water::Water> water, const std::vector<Part>& parts) {
    latest_ = std::move(water);
    unkept_.insert(parts.begin(), parts.end());
    touchedSince_.insert(parts.begin(), parts.end());
    if (!store_) {
        unkept_.insert(water::allParts.begin(), water::allParts.end()); // A new file holds nothing.
    }
    emit changed();
    if (isReadOnly_) {
        takeFailure({ErrorKind::unwritableOutput, "the water file may only be read",
                     store_->path().string(), "save the water in another place"});
        return;
    }
    saveNext();
}

void Keeper::keepFound(Found found) {
    if (!isReadOnly_) {
        found_ = std::move(found);
        saveNext();
    }
}

void Keeper::saveNext() {
    if (runner_.isBusy()) {
        return; // What runs looks for more when it comes home.
    }
    if (move_) {
        saveWhole(*std::exchange(move_, std::nullopt));
    } else if (!unkept_.empty() && canTry()) {
        saveParts();
    } else if (unkept_.empty() && found_ && store_) {
        saveFound();
    }
}

void Keeper::saveParts() {
    retry_.stop();
    touchedSince_.clear();
    const auto work = [store = store_, maker = maker_, water = latest_,
                       parts = std::vector<Part>(unkept_.begin(), unkept_.end())](
                          base::Progress& progress) -> Result<Saved> {
        Saved saved{store, {}};
        if (!saved.store) {
            auto made = maker();
            if (!made) {
                saved.error = made.error();
                return saved;
            }
            saved.store = std::move(*made);
        }
        if (const auto kept = saved.store->save(*water, parts, progress); !kept) {
            saved.error = kept.error();
        }
        return saved;
    };
    runner_.start<Saved>(tr("Keeping the change"), work,
                         [this, served = served_](Result<Saved> saved) {
                             if (served == served_ && saved) {
                                 takeSaved(std::move(*saved));
                             } else {
                                 saveNext();
                             }
                         });
}

void Keeper::takeSaved(Saved saved) {
    const bool isNewFile = !store_ && saved.store;
    store_ = std::move(saved.store);
    const bool isMoreToDo = !touchedSince_.empty();
    if (saved.error) {
        takeFailure(*saved.error);
    } else {
        unkept_ = std::exchange(touchedSince_, {});
        whyNot_.reset();
        emit changed();
    }
    if (isNewFile) {
        emit fileMade();
    }
    // After a failure only what is new is a reason to try again at once.
    if (!saved.error || isMoreToDo) {
        saveNext();
    }
}

void Keeper::takeFailure(const Error& error) {
    const bool isNews = !whyNot_;
    whyNot_ = error;
    if (canTry()) {
        retry_.start();
    }
    emit changed();
    if (isNews) {
        emit failed(error);
    }
}

void Keeper::saveFound() {
    retry_.stop();
    const auto found = std::make_shared<const Found>(*std::exchange(found_, std::nullopt));
    const auto stamp = found->derived.stamps.find(water::Step::draw);
    const bool isNewDrawing = found->derived.drawn && found->derived.drawn != drawingKept_ &&
                              stamp != found->derived.stamps.end();
    const auto work = [store = store_, found,
                       drawnFrom = isNewDrawing ? std::optional(stamp->second) : std::nullopt](
                          base::Progress& progress) -> Result<void> {
        const water::Derived& derived = found->derived;
        if (drawnFrom) {
            const auto& frame = *found->water->frame;
            if (auto kept = store->saveDrawing(*derived.drawn, frame, *drawnFrom); !kept) {
                return kept;
            }
        }
        return store->saveFound(*found->water, derived, wording::told(found->marks), progress);
    };
    runner_.start<void>(tr("Keeping the drawing"), work,
                        [this, found, served = served_](const Result<void>& kept) {
                            if (served == served_) {
                                takeSavedFound(*found, kept);
                            } else {
                                saveNext();
                            }
                        });
}

void Keeper::takeSavedFound(const Found& found, const Result<void>& kept) {
    if (kept) {
        drawingKept_ = found.derived.drawn ? found.derived.drawn : drawingKept_;
        hasFoundFailed_ = false;
        saveNext();
        return;
    }
    const bool isNewer = found_.has_value();
    if (!isNewer) {
        found_ = found;
    }
    if (!std::exchange(hasFoundFailed_, true)) {
        emit failed(kept.error());
    }
    if (isNewer || !unkept_.empty() || move_) {
        saveNext();
    } else {
        retry_.start();
    }
}

void Keeper::moveTo(const QString& path, std::function<Found()> whole,
                    std::function<void(Result<void>)> then) {
    move_ = Move{path, std::move(whole), std::move(then)};
    saveNext();
}

void Keeper::saveWhole(Move move) {
    using Moved = std::shared_ptr<store::WaterStore>;
    touchedSince_.clear();
    const auto whole = std::make_shared<const Found>(move.whole());
    const auto work = [path = move.path.toStdString(),
                       whole](base::Progress& progress) -> Result<Moved> {
        auto made = store::create(path);
        if (!made) {
            return std::unexpected(made.error());
        }
        const auto saved = (*made)->saveWhole(*whole->water, whole->derived,
                                              wording::told(whole->marks), progress);
        if (!saved) {
            made->reset();
            std::error_code ignored; // Why it failed says more than why half of it stays.
            std::filesystem::remove(path, ignored);
            return std::unexpected(saved.error());
        }
        return Moved(std::move(*made));
    };
    runner_.start<Moved>(
        tr("Saving the water in another place"), work,
        [this, whole, then = std::move(move.then), served = served_](Result<Moved> moved) {
            if (served == served_ && moved) {
                takeMoved(std::move(*moved), whole->derived.drawn);
                then({});
            } else if (served == served_) {
                then(std::unexpected(moved.error()));
            }
            saveNext();
        });
}

void Keeper::takeMoved(std::shared_ptr<store::WaterStore> store,
                       std::shared_ptr<const surface::DrawnWater> drawing) {
    // What was changed while it was written is still to be kept, in the new file.
    auto latest = latest_;
    auto touched = std::exchange(touchedSince_, {});
    auto found = std::exchange(found_, std::nullopt);
    start(std::move(store));
    latest_ = std::move(latest);
    unkept_ = std::move(touched);
    found_ = std::move(found);
    drawingKept_ = std::move(drawing);
    emit changed();
}

bool Keeper::finish() {
    saveNext();
    runner_.finishAll();
    return unkept_.empty();
}

} // namespace open_water
