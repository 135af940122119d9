// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/adding_up.h"

#include "app/wording/tongue.h"

#include <cmath>
#include <numeric>

namespace wording {

namespace {

constexpr double stepsInAUnit = 100.0; // two decimals

QString written(const Words& words, std::int64_t steps, bool hasSign) {
    const QString size = Tongue::number(std::fabs(static_cast<double>(steps)) / stepsInAUnit, 2);
    const QString sign = steps < 0               ? QStringLiteral("−")
                         : hasSign && steps != 0 ? QStringLiteral("+")
                                                 : QString();
    return sign + size + ' ' + words.depthUnit();
}

} // namespace

std::vector<std::int64_t> roundedToAddUp(std::span<const double> terms) {
    std::vector<std::int64_t> rounded;
    double whole = 0.0;
    for (const double term : terms) {
        rounded.push_back(std::llround(term));
        whole += term;
    }
    std::int64_t left =
        std::llround(whole) - std::accumulate(rounded.begin(), rounded.end(), std::int64_t{0});
    while (left != 0) {
        const int way = left > 0 ? 1 : -1;
        std::size_t farthest = 0;
        double most = -1.0;
        for (std::size_t i = 0; i < terms.size(); ++i) {
            const double missing = way * (terms[i] - static_cast<double>(rounded[i]));
            if (missing > most) {
                most = missing;
                farthest = i;
            }
        }
        rounded[farthest] += way;
        left -= way;
    }
    return rounded;
}

QStringList sumWritten(const Words& words, std::span<const units::Length> terms) {
    std::vector<double> steps;
    for (const units::Length term : terms) {
        steps.push_back(stepsInAUnit * (words.isMetric() ? term.inMetres() : term.inFeet()));
    }
    const std::vector<std::int64_t> rounded = roundedToAddUp(steps);
    QStringList lines;
    for (const std::int64_t term : rounded) {
        lines.append(written(words, term, !lines.isEmpty()));
    }
    lines.append(
        written(words, std::accumulate(rounded.begin(), rounded.end(), std::int64_t{0}), false));
    return lines;
}

} // namespace wording
