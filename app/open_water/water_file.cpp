// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/open_water/water_file.h"

#include "core/geo/outline.h"
#include "core/store/copies.h"
#include "core/water/steps/choose_scale.h"
#include "core/water/steps/note_numbers.h"

namespace open_water {

namespace {

/// A drawing can always be made again: whatever is wrong with the one kept, it is left out.
water::Derived keptOf(store::WaterStore& store, const water::Water& water) {
    water::Derived kept;
    if (!water.frame || water.shoreline.empty()) {
        return kept;
    }
    auto outline = geo::Outline::make(water.shoreline, *water.frame);
    if (!outline) {
        return kept;
    }
    if (auto drawing = store.loadDrawing(*outline); drawing && *drawing) {
        kept.drawn = std::make_shared<const surface::DrawnWater>(std::move((*drawing)->drawn));
        kept.stamps[water::Step::draw] = (*drawing)->stamp;
        kept.outline = std::make_shared<const geo::Outline>(std::move(*outline));
        water::chooseScale(water, kept);
    }
    return kept;
}

/// Whether a drawing of `one` can be laid over `other`.
bool haveSameShore(const water::Water& one, const water::Water& other) {
    return one.frame == other.frame && one.shoreline == other.shoreline;
}

} // namespace

base::Result<FirstLook> firstLookAt(const std::filesystem::path& path, base::Progress& progress) {
    progress.begin("reading the drawing");
    if (store::stateOf(path) != store::FileState::current) {
        return base::fail(base::ErrorKind::unusableInput, "the file is of another version",
                          path.string(), "open it to see it");
    }
    auto store = store::open(path, store::Purpose::looking);
    if (!store) {
        return std::unexpected(store.error());
    }
    auto shore = (*store)->loadShore();
    if (!shore) {
        return std::unexpected(shore.error());
    }
    FirstLook look{std::make_shared<const water::Water>(std::move(*shore)), {}};
    look.kept = keptOf(**store, *look.water);
    return look;
}

base::Result<WaterFile> readWaterFile(const std::filesystem::path& path, base::Progress& progress,
                                      const std::function<void(const FirstLook&)>& look,
                                      store::Purpose purpose) {
    auto store = store::openWithCopy(path, purpose);
    if (!store) {
        return std::unexpected(store.error());
    }
    progress.begin("reading the drawing");
    auto shore = (*store)->loadShore();
    if (!shore) {
        return std::unexpected(shore.error());
    }
    FirstLook first{std::make_shared<const water::Water>(std::move(*shore)), {}};
    first.kept = keptOf(**store, *first.water);
    if (progress.stopAsked()) {
        return std::unexpected(base::cancelled());
    }
    if (look && first.kept.drawn) {
        look(first);
    }
    auto water = (*store)->load(progress);
    if (!water) {
        return std::unexpected(water.error());
    }
    // Another program may have saved a shore meanwhile.
    water::Derived kept =
        haveSameShore(*first.water, *water) ? std::move(first.kept) : keptOf(**store, *water);
    if (progress.stopAsked()) {
        return std::unexpected(base::cancelled());
    }
    if (auto loaded = (*store)->loadResults(*water, store::keptSteps, kept); !loaded) {
        return std::unexpected(loaded.error());
    }
    water::chooseScale(*water, kept);
    water::noteNumbers(*water, kept); // Its sections may have been kept before its numbers were.
    return WaterFile{std::move(*store), std::move(*water), std::move(kept)};
}

} // namespace open_water
