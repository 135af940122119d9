// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/derive.h"

#include "core/contours/find_bands.h"
#include "core/contours/trace_contours.h"
#include "core/geo/hull.h"
#include "core/reduction/correct_depths.h"
#include "core/reduction/find_crossings.h"
#include "core/reduction/set_aside_along_track.h"
#include "core/reduction/set_aside_outside_shore.h"
#include "core/structure/find_structure.h"
#include "core/surface/draw_water.h"
#include "core/surface/measure_water.h"
#include "core/water/steps/choose_scale.h"
#include "core/water/steps/derive_steps.h"
#include "core/water/steps/sections_of.h"
#include "core/water/steps/stamps.h"
#include "core/water/steps/year_of_weed.h"
#include "core/weed/map_weed.h"

#include <algorithm>
#include <chrono>
#include <cmath>

#include <fmt/format.h>

namespace water {

using base::Progress;
using base::Result;

namespace {

template <class T>
Result<std::shared_ptr<const T>> shared(Result<T> made) {
    if (!made) {
        return std::unexpected(std::move(made.error()));
    }
    return std::make_shared<const T>(std::move(*made));
}

Result<void> makeReduced(const Water& water, Derived& derived, Progress& progress) {
    auto outline = outlineOf(water);
    if (!outline) {
        return std::unexpected(outline.error());
    }
    auto checked = checkSurvey(water, outline->outline, progress);
    if (!checked) {
        return std::unexpected(checked.error());
    }
    derived.outline = std::make_shared<const geo::Outline>(std::move(outline->outline));
    derived.outlineIsAssumed = outline->isAssumed;
    derived.checked = std::make_shared<const CheckedSurvey>(std::move(*checked));
    derived.notes.clear();
    if (outline->isAssumed) {
        derived.notes.emplace_back(
            "there is no shoreline yet: one is assumed 15 m outside the soundings");
    }
    return {};
}

Result<void> makeDrawn(const Water& water, Derived& derived, Progress& progress) {
    surface::DrawSettings settings;
    settings.cell = water.settings.cell;
    auto drawn = surface::drawWater(*derived.outline, soundingsToDraw(water, *derived.checked),
                                    settings, progress, derived.drawn.get());
    if (!drawn) {
        return std::unexpected(drawn.error());
    }
    if (const auto& apart = derived.checked->differences; !apart.empty()) {
        drawn->report.daysDiffer =
            units::Length::metres(std::fabs(apart.front().difference.inMetres()));
    }
    drawn->report.daysWithoutLevel = daysWithoutLevel(water);
    derived.drawn = std::make_shared<const surface::DrawnWater>(std::move(*drawn));
    derived.levelUnknown.reset();
    return {};
}

Result<void> makeForm(const Water& water, Derived& derived, Progress& progress) {
    auto form = shared(formOf(water.settings.countsIn, derived.bands, *derived.drawn,
                              *derived.outline, {}, progress));
    if (!form) {
        return std::unexpected(form.error());
    }
    derived.form = *form;
    return {};
}

Result<void> makeToday(const Water& water, Derived& derived, Progress& progress) {
    const units::Length rise = water.plan.day.levelChange;
    if (rise == units::Length() && derived.form) {
        derived.today = derived.form;
        return {};
    }
    auto form = shared(formOf(water.settings.countsIn, derived.bands, *derived.drawn,
                              *derived.outline, rise, progress));
    if (!form) {
        return std::unexpected(form.error());
    }
    derived.today = *form;
    return {};
}

/// Nothing too where it lies beyond what the frame can take.
std::optional<geo::WaterPoint> launchOf(const Water& water) {
    if (!water.plan.launch) {
        return std::nullopt;
    }
    const geo::WaterPoint launch = water.frame->toWater(*water.plan.launch);
    return std::isfinite(launch.x_m + launch.y_m) ? std::optional(launch) : std::nullopt;
}

structure::StructureSettings structureSettings(const Water& water) {
    const StructureChoice& chosen = water.settings.structure;
    structure::StructureSettings settings;
    settings.fineScale = chosen.fineScale.value_or(settings.fineScale);
    settings.broadScale = chosen.broadScale.value_or(settings.broadScale);
    settings.dropOffFrom_percent = chosen.dropOffFrom_percent;
    settings.highGround = chosen.highGround;
    settings.leastArea = chosen.leastArea.value_or(settings.leastArea);
    settings.launch = launchOf(water);
    return settings;
}

Result<void> makeStructure(const Water& water, Derived& derived, Progress& progress) {
    const structure::StructureSettings settings = structureSettings(water);
    auto zones = shared(structure::findStructure(derived.drawn->depth, derived.drawn->mask,
                                                 derived.drawn->trust.halfWidths_m(), derived.bands,
                                                 settings, progress));
    if (!zones) {
        return std::unexpected(zones.error());
    }
    derived.structure = *zones;
    return {};
}

/// Weed is mapped without trust; how well the depths of its zones are known is told all the same.
void fillTrust(structure::ZoneMap& map, const grid::Grid<float>& halfWidths_m) {
    for (structure::Zone& zone : map.zones) {
        double sum_m = 0.0;
        double known = 0.0;
        for (const std::size_t cell : zone.cells) {
            const auto half_m = static_cast<double>(halfWidths_m[cell]);
            if (!std::isnan(half_m)) {
                sum_m += half_m;
                known += 1.0;
            }
        }
        zone.meanTrust_m = known > 0.0 ? sum_m / known : 0.0;
    }
}

Result<void> makeWeed(const Water& water, Derived& derived, Progress& progress) {
    weed::WeedSettings settings;
    settings.seasonFactor = water.settings.weedLeft;
    settings.year = yearOfWeed(water);
    auto map =
        weed::mapWeed(derived.drawn->depth, derived.drawn->mask, water.weedNotes, water.leadLine,
                      water.settings.secchi, *water.frame, settings, progress);
    if (!map) {
        return std::unexpected(map.error());
    }
    fillTrust(map->zones, derived.drawn->trust.halfWidths_m());
    derived.weed = std::make_shared<const weed::WeedMap>(std::move(*map));
    return {};
}

Result<void> makeSections(const Water& water, Derived& derived, Progress& progress) {
    auto map = shared(sectionsOf(water, derived, launchOf(water), progress));
    if (!map) {
        return std::unexpected(map.error());
    }
    derived.sections = *map;
    return {};
}

struct Derivation {
    Step step;
    std::string_view telling;
    Result<void> (*make)(const Water&, Derived&, Progress&);
};

constexpr std::array derivations{
    Derivation{Step::reduce, "Looking the soundings over", makeReduced},
    Derivation{Step::draw, "Drawing the water", makeDrawn},
    Derivation{Step::bands, "Tracing contours and bands", makeForm},
    Derivation{Step::level, "Tracing the water at today's level", makeToday},
    Derivation{Step::structure, "Finding drop-offs, humps and shelves", makeStructure},
    Derivation{Step::weed, "Mapping the weed", makeWeed},
    Derivation{Step::sections, "Dividing the water into sections", makeSections},
};

/// What a step holds, emptied.
void forget(Derived& derived, Step step) {
    switch (step) {
    case Step::reduce:
        derived.outline.reset();
        derived.outlineIsAssumed = false;
        derived.notes.clear();
        derived.checked.reset();
        break;
    case Step::draw:
        derived.drawn.reset();
        derived.levelUnknown.reset();
        break;
    case Step::bands:
        derived.form.reset();
        break;
    case Step::level:
        derived.today.reset();
        break;
    case Step::structure:
        derived.structure.reset();
        break;
    case Step::weed:
        derived.weed.reset();
        break;
    case Step::sections:
        derived.sections.reset();
        break;
    }
    derived.stamps.erase(step);
}

/// Of a drawing that was kept, too, once the soundings have been looked over.
void tellWhereLevelIsUnknown(const Water& water, Derived& derived) {
    if (derived.drawn && derived.checked && !derived.levelUnknown && daysWithoutLevel(water) > 0) {
        derived.levelUnknown = std::make_shared<const grid::Grid<std::uint8_t>>(
            levelUnknownOn(derived.drawn->depth.frame(), water, *derived.checked));
    }
}

/// After a failure nothing stands that was made from what is gone: without soundings or without a
/// drawing nothing that comes later, else the step alone.
void forgetFrom(Derived& derived, Step failed) {
    const bool areOthersMadeFromIt = failed == Step::reduce || failed == Step::draw;
    for (const Derivation& derivation : derivations) {
        if (derivation.step == failed || (areOthersMadeFromIt && derivation.step > failed)) {
            forget(derived, derivation.step);
        }
    }
}

/// Nothing stands without the soundings looked over, and nothing but that without a drawing.
bool canBeMade(const Derived& derived, Step step) {
    return step == Step::reduce || (step == Step::draw && derived.checked) ||
           derived.drawn != nullptr;
}

/// Makes the step unless what is held still holds. \return only cancelled; other errors become
/// failures.
Result<void> makeStep(const Derivation& derivation, const Water& water, Stamp wanted,
                      Derived& derived, Progress& progress) {
    if (derived.isCurrent(derivation.step, wanted)) {
        return {};
    }
    if (progress.stopAsked()) {
        return std::unexpected(base::cancelled());
    }
    progress.begin(derivation.telling);
    const auto start = std::chrono::steady_clock::now();
    if (auto made = derivation.make(water, derived, progress); !made) {
        if (made.error().kind == base::ErrorKind::cancelled) {
            return made;
        }
        forgetFrom(derived, derivation.step);
        derived.failures.emplace(derivation.step, made.error());
        return {};
    }
    derived.seconds[derivation.step] =
        std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    derived.stamps[derivation.step] = wanted;
    return {};
}

Result<void> checkBefore(const Water& water) {
    if (!water.frame) {
        return base::fail(base::ErrorKind::wrongUse,
                          "the water has no soundings and no shoreline yet", "",
                          "bring in a log of soundings first");
    }
    const auto problems = problemsIn(water.settings);
    if (!problems.empty()) {
        return base::fail(base::ErrorKind::wrongUse, problems.front(), "settings",
                          "choose another value");
    }
    return {};
}

} // namespace

Result<Derived> derive(const Water& water, const Derived& before, Step upTo, Progress& progress) {
    if (auto ready = checkBefore(water); !ready) {
        return std::unexpected(ready.error());
    }
    Derived derived = before;
    derived.failures.clear();
    const Stamps stamps = Stamps::of(water);
    for (const Derivation& derivation : derivations) {
        if (!canBeMade(derived, derivation.step)) {
            break;
        }
        if (derivation.step == Step::bands) {
            chooseScale(water, derived);
        }
        if (auto made = makeStep(derivation, water, stamps.at(derivation.step), derived, progress);
            !made) {
            return std::unexpected(made.error());
        }
        if (derivation.step == upTo) {
            break;
        }
    }
    tellWhereLevelIsUnknown(water, derived);
    return derived;
}

Result<Derived> deriveToPlan(const Water& water, const Derived& before, Progress& progress) {
    if (auto ready = checkBefore(water); !ready) {
        return std::unexpected(ready.error());
    }
    const Stamps stamps = Stamps::of(water);
    if (!before.isCurrent(Step::draw, stamps.at(Step::draw))) {
        return derive(water, before, Step::sections, progress);
    }
    Derived derived = before;
    derived.failures.clear();
    if (!derived.isCurrent(Step::reduce, stamps.at(Step::reduce))) {
        auto outline = outlineOf(water);
        if (!outline) {
            return std::unexpected(outline.error());
        }
        derived.outline = std::make_shared<const geo::Outline>(std::move(outline->outline));
        derived.outlineIsAssumed = outline->isAssumed;
    }
    chooseScale(water, derived);
    for (const Derivation& derivation : derivations) {
        if (derivation.step >= Step::structure) {
            if (auto made =
                    makeStep(derivation, water, stamps.at(derivation.step), derived, progress);
                !made) {
                return std::unexpected(made.error());
            }
        }
    }
    return derived;
}

Derived withKeptDrawing(const Water& water, surface::DrawnWater drawn, Stamp stamp) {
    Derived derived;
    if (!water.frame || stamp != stampOf(water, Step::draw)) {
        return derived;
    }
    derived.drawn = std::make_shared<const surface::DrawnWater>(std::move(drawn));
    derived.stamps[Step::draw] = stamp;
    return derived;
}

Derived withoutDrawing(Derived derived) {
    for (const Derivation& derivation : derivations) {
        if (derivation.step != Step::reduce) {
            forget(derived, derivation.step);
        }
    }
    return derived;
}

Derived withoutSections(Derived derived) {
    forget(derived, Step::sections);
    return derived;
}

} // namespace water
