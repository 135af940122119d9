// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reduction/set_aside_disagreeing.h"

#include "core/reduction/hand_kept.h"
#include "core/reduction/robust.h"

#include <fmt/format.h>

namespace reduction {

base::Result<ReducedSurvey> setAsideDisagreeing(const std::vector<soundings::SurveyDay>& days,
                                                ReducedSurvey survey,
                                                std::span<const Residual> residuals,
                                                const DisagreeingSettings& settings,
                                                base::Progress& progress) {
    using base::ErrorKind;
    if (!(settings.threshold >= 3.0 && settings.threshold <= 20.0) ||
        !(settings.floor_m >= 0.01 && settings.floor_m <= 2.0)) {
        return base::fail(ErrorKind::wrongUse, "a setting is out of its range",
                          "threshold or floor_m", "choose 3 to 20, and 0.01 to 2 m");
    }
    if (residuals.size() != survey.keptCount()) {
        return base::fail(
            ErrorKind::wrongUse,
            fmt::format("{} residuals for {} kept soundings", residuals.size(), survey.keptCount()),
            "", "draw the water again");
    }
    if (residuals.empty()) {
        return survey;
    }
    progress.begin("comparing neighbouring passes");
    std::vector<double> all_m;
    all_m.reserve(residuals.size());
    for (const Residual& residual : residuals) {
        all_m.push_back(residual.residual_m);
    }
    const double middle_m = medianOf(all_m);
    const double sigma_m = std::fmax(settings.floor_m, robustSigma(std::move(all_m), middle_m));
    auto residual = residuals.begin();
    for (std::size_t d = 0; d < survey.days.size(); ++d) {
        if (progress.stopAsked()) {
            return std::unexpected(base::cancelled());
        }
        ReducedDay& day = survey.days[d];
        const std::vector<bool> isHeld = handKept(days[d]);
        for (std::size_t i = 0; i < day.verdicts.size(); ++i) {
            if (day.verdicts[i] != soundings::Verdict::kept) {
                continue;
            }
            const double limit_m =
                settings.threshold * std::hypot(residual->halfWidth_m / 1.96, sigma_m);
            if (std::fabs(residual->residual_m - middle_m) > limit_m && !isHeld[i]) {
                day.verdicts[i] = soundings::Verdict::disagrees;
            }
            ++residual;
        }
    }
    return survey;
}

} // namespace reduction
