// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/hour_weight.h"

#include <array>

namespace water {

namespace {

constexpr std::size_t blocks = 12;

} // namespace

std::function<double(units::Moment)> hourWeightOf(const std::optional<marks::LearnedCatch>& learned,
                                                  const units::Clock& clock) {
    if (!learned) {
        return {};
    }
    std::array<double, blocks> weights{};
    for (std::size_t k = 0; k < blocks; ++k) {
        weights[k] =
            learned->model.effect({{learning::Group::hour, static_cast<std::int64_t>(k), 1.0}})
                .rate();
    }
    return [weights, clock](units::Moment moment) {
        const double at = clock.hourOfDay(moment) / 24.0 * static_cast<double>(blocks);
        return weights[static_cast<std::size_t>(at) % blocks];
    };
}

} // namespace water
