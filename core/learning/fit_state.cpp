// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/learning/fit_state.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace learning {

namespace {

/// Longest step of a logarithm.
constexpr double longest = 2.0;
/// What an hour may be thought to bring, as a logarithm: keeps one absurd stay from overflowing.
constexpr double leastLog = -12.0;
constexpr double mostLog = 4.0;
/// Share of what may be that is taken for the variance before it is known.
constexpr double firstShare = 0.7;

double square(double x) {
    return x * x;
}

} // namespace

FitState::FitState(std::vector<Observation> observations, EffectSizes sizes)
    : observations_(std::move(observations)), sizes_(sizes) {
    nameWeights();
    layRows();
    layOffsets();
    weights_.assign(names_.size() + 1, 0.0);
    variances_.resize(rows_.size());
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        variances_[i] = firstShare * (square(EffectSizes::base()) + square(sizes_.day()) +
                                      sizes_.priorVarianceOf(observations_[i].features));
    }
}

void FitState::nameWeights() {
    for (const Observation& one : observations_) {
        for (const Feature& feature : one.features) {
            if (feature.value != 0.0) {
                names_.emplace_back(feature.group, feature.key);
            }
        }
    }
    std::ranges::sort(names_);
    names_.erase(std::unique(names_.begin(), names_.end()), names_.end());
}

void FitState::layRows() {
    std::map<int, std::size_t> dayOf;
    for (const Observation& one : observations_) {
        dayOf.emplace(one.day, 0);
    }
    for (auto& [day, number] : dayOf) {
        number = days_.size();
        days_.emplace_back();
    }
    for (const Observation& one : observations_) {
        Row row{{0, 1.0, 0}};
        for (const Feature& feature : one.features) {
            if (feature.value != 0.0) {
                const auto found = std::ranges::lower_bound(
                    names_, CatchModel::WeightName(feature.group, feature.key));
                row.push_back(
                    {static_cast<std::size_t>(found - names_.begin()) + 1, feature.value, 0});
            }
        }
        std::ranges::sort(row, {}, &Touch::weight);
        Day& day = days_[dayOf.at(one.day)];
        day.stays.push_back(rows_.size());
        for (const Touch& touch : row) {
            day.touched.push_back(touch.weight);
        }
        rows_.push_back(std::move(row));
    }
    for (Day& day : days_) {
        std::ranges::sort(day.touched);
        day.touched.erase(std::unique(day.touched.begin(), day.touched.end()), day.touched.end());
        for (const std::size_t stay : day.stays) {
            for (Touch& touch : rows_[stay]) {
                const auto at = std::ranges::lower_bound(day.touched, touch.weight);
                touch.inDay = static_cast<std::size_t>(at - day.touched.begin());
            }
        }
    }
}

void FitState::layOffsets() {
    offsets_.clear();
    for (const Observation& one : observations_) {
        const double mayBe = square(EffectSizes::base()) + square(sizes_.day()) +
                             sizes_.priorVarianceOf(one.features);
        offsets_.push_back(std::log(firstGuess) - 0.5 * mayBe);
    }
}

double FitState::precisionOf(std::size_t weight) const {
    const double size = weight == 0 ? EffectSizes::base() : sizes_.of(names_[weight - 1].first);
    return 1.0 / square(size);
}

double FitState::logRate(std::size_t stay) const {
    double sum = offsets_[stay];
    for (const Touch& touch : rows_[stay]) {
        sum += touch.value * weights_[touch.weight];
    }
    return sum;
}

double FitState::expectedOf(std::size_t stay, const Day& day) const {
    return observations_[stay].rodHours *
           std::exp(
               std::clamp(logRate(stay) + day.luck + 0.5 * variances_[stay], leastLog, mostLog));
}

void FitState::addStay(std::size_t stay, Day& day, double& slopeOfDay) {
    const double expected = expectedOf(stay, day);
    const double left = observations_[stay].fish - expected;
    const Row& row = rows_[stay];
    for (std::size_t a = 0; a < row.size(); ++a) {
        const auto [i, x, inDay] = row[a];
        slope_[i] += x * left;
        double* line = curvature_.row(i);
        for (std::size_t b = 0; b <= a; ++b) {
            line[row[b].weight] += expected * x * row[b].value;
        }
        day.coupling[inDay] += expected * x;
    }
    day.curvature += expected;
    slopeOfDay += left;
}

void FitState::eliminate(const Day& day, double slopeOfDay) {
    for (std::size_t a = 0; a < day.touched.size(); ++a) {
        const double share = day.coupling[a] / day.curvature;
        slope_[day.touched[a]] -= share * slopeOfDay;
        double* line = curvature_.row(day.touched[a]);
        for (std::size_t b = 0; b <= a; ++b) {
            line[day.touched[b]] -= share * day.coupling[b];
        }
    }
}

void FitState::layEquations() {
    const std::size_t n = weights_.size();
    curvature_ = SymmetricMatrix(n);
    slope_.assign(n, 0.0);
    slopeOfDay_.clear();
    for (std::size_t i = 0; i < n; ++i) {
        curvature_.lower(i, i) = precisionOf(i);
        slope_[i] = -precisionOf(i) * weights_[i];
    }
    for (Day& day : days_) {
        const double precision = 1.0 / square(sizes_.day());
        day.coupling.assign(day.touched.size(), 0.0);
        day.curvature = precision;
        double slopeOfDay = -precision * day.luck;
        for (const std::size_t stay : day.stays) {
            addStay(stay, day, slopeOfDay);
        }
        slopeOfDay_.push_back(slopeOfDay);
    }
    for (std::size_t t = 0; t < days_.size(); ++t) {
        eliminate(days_[t], slopeOfDay_[t]);
    }
}

void FitState::laySlopes() {
    for (std::size_t i = 0; i < weights_.size(); ++i) {
        slope_[i] = -precisionOf(i) * weights_[i];
    }
    for (std::size_t t = 0; t < days_.size(); ++t) {
        const Day& day = days_[t];
        slopeOfDay_[t] = -day.luck / square(sizes_.day());
        for (const std::size_t stay : day.stays) {
            const double left = observations_[stay].fish - expectedOf(stay, day);
            slopeOfDay_[t] += left;
            for (const Touch& touch : rows_[stay]) {
                slope_[touch.weight] += touch.value * left;
            }
        }
        for (std::size_t a = 0; a < day.touched.size(); ++a) {
            slope_[day.touched[a]] -= day.coupling[a] / day.curvature * slopeOfDay_[t];
        }
    }
}

double FitState::step() {
    layEquations();
    if (!factor_.factorise(curvature_)) {
        return 0.0; // Cannot be: the prior alone is positive definite and stays only add to it.
    }
    return move();
}

double FitState::glide() {
    laySlopes();
    return move();
}

double FitState::move() {
    const std::vector<double> move = factor_.solved(slope_);
    std::vector<double> moveOfDay;
    double most = 0.0;
    for (std::size_t t = 0; t < days_.size(); ++t) {
        const Day& day = days_[t];
        double left = slopeOfDay_[t];
        for (std::size_t a = 0; a < day.touched.size(); ++a) {
            left -= day.coupling[a] * move[day.touched[a]];
        }
        moveOfDay.push_back(left / day.curvature);
        for (const std::size_t stay : day.stays) {
            double change = moveOfDay.back();
            for (const Touch& touch : rows_[stay]) {
                change += touch.value * move[touch.weight];
            }
            most = std::max(most, std::fabs(change));
        }
    }
    const double share = most > longest ? longest / most : 1.0;
    for (std::size_t i = 0; i < weights_.size(); ++i) {
        weights_[i] += share * move[i];
    }
    for (std::size_t t = 0; t < days_.size(); ++t) {
        days_[t].luck += share * moveOfDay[t];
    }
    return most;
}

void FitState::believe(std::span<const double> beliefs) {
    double sum = 0.0;
    for (std::size_t i = 0; i < offsets_.size(); ++i) {
        offsets_[i] += beliefs[i];
        sum += beliefs[i];
    }
    // What is held of all places alike says nothing of any: the water's own weight takes it up.
    weights_[0] -= sum / static_cast<double>(offsets_.size());
}

void FitState::findVariances() {
    covariance_ = factor_.inverse();
    for (Day& day : days_) {
        const std::size_t n = day.touched.size();
        day.covariance.assign(n, 0.0);
        day.variance = 1.0 / day.curvature;
        for (std::size_t a = 0; a < n; ++a) {
            const double* row = covariance_.row(day.touched[a]);
            double sum = 0.0;
            for (std::size_t b = 0; b < n; ++b) {
                sum += day.coupling[b] * row[day.touched[b]];
            }
            day.covariance[a] = -sum / day.curvature;
            day.variance -= day.coupling[a] / day.curvature * day.covariance[a];
        }
        for (const std::size_t stay : day.stays) {
            double sum = day.variance;
            for (const auto& [i, x, inDay] : rows_[stay]) {
                sum += 2.0 * x * day.covariance[inDay];
                const double* row = covariance_.row(i);
                for (const Touch& other : rows_[stay]) {
                    sum += x * other.value * row[other.weight];
                }
            }
            variances_[stay] = sum;
        }
    }
}

void FitState::renewSizes(const EffectSizes& from, double countFor, bool renewDay) {
    const EffectSizes before = sizes_;
    for (const Group group : allGroups) {
        double squares = countFor * square(from.of(group));
        double pinned = countFor;
        for (std::size_t i = 1; i < weights_.size(); ++i) {
            if (names_[i - 1].first == group) {
                squares += square(weights_[i]);
                pinned += 1.0 - covariance_.at(i, i) / square(before.of(group));
            }
        }
        sizes_.set(group, std::sqrt(squares / pinned));
    }
    if (renewDay) {
        double squares = countFor * square(from.day());
        double pinned = countFor;
        for (const Day& day : days_) {
            squares += square(day.luck);
            pinned += 1.0 - day.variance / square(before.day());
        }
        sizes_.setDay(std::sqrt(squares / pinned));
    }
    layOffsets();
}

CatchModel FitState::model() const {
    return {sizes_, names_, weights_, covariance_};
}

} // namespace learning
