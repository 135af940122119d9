// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/water_file.h"

#include "core/water/derive.h"

namespace batch {

using base::Progress;
using base::Result;

Result<OpenedWater> openWater(const std::filesystem::path& path, Progress& progress) {
    auto store = store::open(path);
    if (!store) {
        return std::unexpected(store.error());
    }
    auto water = (*store)->load(progress);
    if (!water) {
        return std::unexpected(water.error());
    }
    return OpenedWater{std::move(*store), std::move(*water), {}};
}

Result<void> deriveOpened(OpenedWater& opened, Progress& progress) {
    const water::Water& water = opened.water;
    if (water.frame && !water.shoreline.empty()) {
        if (const auto outline = geo::Outline::make(water.shoreline, *water.frame)) {
            auto kept = opened.store->loadDrawing(*outline);
            if (!kept) {
                return std::unexpected(kept.error());
            }
            if (*kept) {
                opened.derived =
                    water::withKeptDrawing(water, std::move((*kept)->drawn), (*kept)->stamp);
            }
        }
    }
    auto derived = water::derive(water, opened.derived, water::Step::sections, progress);
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
