// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/contour_runs.h"

#include "app/chart/pointer_cache.h"
#include "app/chart/todays_form.h"
#include "app/chart/trust_fade.h"
#include "app/chart/water_path.h"

namespace chart {

namespace {

void addRuns(std::vector<ContourRun>& runs, const contours::Contour& contour,
             const TrustFade* fade) {
    const auto guessAt = [fade](geo::WaterPoint p) { return fade != nullptr && fade->isGuess(p); };
    ContourRun run{contour.depth, {}, {}, false};
    for (const geo::WaterPoint p : contour.line) {
        const bool isGuess = guessAt(p);
        if (!run.line.empty() && isGuess != run.isGuess) {
            const ContourRun next{contour.depth, {run.line.back()}, {}, isGuess};
            run.box = boxOf(run.line);
            runs.push_back(std::move(run));
            run = next;
        }
        run.isGuess = isGuess;
        run.line.push_back(p);
    }
    if (run.line.size() >= 2) {
        run.box = boxOf(run.line);
        runs.push_back(std::move(run));
    }
}

} // namespace

std::shared_ptr<const std::vector<ContourRun>> contourRuns(const water::Derived& derived) {
    static PointerCache<water::WaterForm, std::vector<ContourRun>> cache;
    return cache.of(formOf(derived), [&derived](const water::WaterForm& form) {
        const auto fade = derived.drawn ? TrustFade::of(derived.drawn, Inks::light) : nullptr;
        std::vector<ContourRun> runs;
        for (const contours::Contour& contour : form.contours) {
            addRuns(runs, contour, fade.get());
        }
        return runs;
    });
}

} // namespace chart
