// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/water_file.h"

#include "core/store/copies.h"
#include "core/water/steps/derive.h"

#include <array>
#include <chrono>
#include <iostream>
#include <string>
#include <string_view>
#include <thread>

namespace batch {

using base::Progress;
using base::Result;

namespace {

using Clock = std::chrono::steady_clock; // Goes on when somebody sets the time.

constexpr std::chrono::milliseconds betweenTries{50};
constexpr std::string_view whatToDo = "close it there, or let this wait for it with --wait SECONDS";

Result<OpenedWater> load(std::unique_ptr<store::WaterStore> store, Progress& progress) {
    auto water = store->load(progress);
    if (!water) {
        return std::unexpected(water.error());
    }
    return OpenedWater{std::move(store), std::move(*water), {}};
}

/// The store, if nobody else has the water; waterInUse if somebody has.
Result<std::unique_ptr<store::WaterStore>> openAlone(const std::filesystem::path& path) {
    auto store = store::openWithCopy(path, store::Purpose::writing);
    if (store && (*store)->opening() == store::Opening::newer) {
        return base::fail(base::ErrorKind::unusableInput,
                          "a newer version of Meremark keeps this water file", path.string(),
                          "change it with that version; nothing was changed");
    }
    if (store && (*store)->owner()) {
        return std::unexpected(store::inUseBy(*(*store)->owner(), path));
    }
    return store;
}

} // namespace

Result<OpenedWater> openWater(const std::filesystem::path& path, Progress& progress) {
    auto store = store::openWithCopy(path, store::Purpose::looking);
    if (!store) {
        return std::unexpected(store.error());
    }
    return load(std::move(*store), progress);
}

Result<OpenedWater> openWaterToChange(const std::filesystem::path& path, double wait_s,
                                      Progress& progress) {
    const auto start = Clock::now();
    std::string told;
    for (;;) {
        auto store = openAlone(path);
        if (store) {
            return load(std::move(*store), progress);
        }
        base::Error error = std::move(store.error());
        if (error.kind != base::ErrorKind::waterInUse) {
            return std::unexpected(std::move(error));
        }
        if (std::chrono::duration<double>(Clock::now() - start).count() >= wait_s) {
            error.whatToDo = whatToDo;
            return std::unexpected(std::move(error));
        }
        if (progress.stopAsked()) {
            return std::unexpected(base::cancelled());
        }
        if (error.what != told) {
            told = error.what;
            std::cerr << "meremark-batch: waiting: " << told << '\n' << std::flush;
        }
        std::this_thread::sleep_for(betweenTries);
    }
}

namespace {

/// What a day is planned on; no more is read than that.
constexpr std::array planSteps{water::Step::structure, water::Step::sections};

/// What the file holds of the water as it is now.
Result<void> takeKept(OpenedWater& opened, Needed needed) {
    const water::Water& water = opened.water;
    if (!water.frame || water.shoreline.empty()) {
        return {};
    }
    auto outline = geo::Outline::make(water.shoreline, *water.frame);
    if (!outline) {
        return {}; // Said when it is drawn.
    }
    auto kept = opened.store->loadDrawing(*outline);
    if (!kept) {
        return std::unexpected(kept.error());
    }
    if (!*kept) {
        return {};
    }
    opened.derived = water::withKeptDrawing(water, std::move((*kept)->drawn), (*kept)->stamp);
    if (!opened.derived.drawn) {
        return {};
    }
    opened.derived.outline = std::make_shared<const geo::Outline>(std::move(*outline));
    return needed == Needed::plan
               ? opened.store->loadResults(water, planSteps, opened.derived)
               : opened.store->loadResults(water, store::keptSteps, opened.derived);
}

} // namespace

Result<void> deriveOpened(OpenedWater& opened, Progress& progress, Needed needed) {
    const water::Water& water = opened.water;
    if (auto kept = takeKept(opened, needed); !kept) {
        return kept;
    }
    auto derived = needed == Needed::plan
                       ? water::deriveToPlan(water, opened.derived, progress)
                       : water::derive(water, opened.derived, water::Step::sections, progress);
    if (!derived) {
        return std::unexpected(derived.error());
    }
    if (!derived->drawn && !derived->failures.empty()) {
        return std::unexpected(derived->failures.begin()->second);
    }
    opened.derived = std::move(*derived);
    return {};
}

Result<OpenedWater> openDrawnWater(const std::filesystem::path& path, Progress& progress) {
    auto opened = openWater(path, progress);
    if (!opened) {
        return opened;
    }
    if (auto derived = deriveOpened(*opened, progress); !derived) {
        return std::unexpected(derived.error());
    }
    return opened;
}

} // namespace batch
