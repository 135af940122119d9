// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/choose_to_learn.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace marks {

namespace {

/// A variance is never taken below this: nothing is known for certain.
constexpr double leastVariance = 1e-6;

class Choice {
public:
    Choice(const std::vector<Eligible>& sorted, const std::vector<Lesson>& lessons,
           const learning::CatchModel& model, const LearningRules& how)
        : sorted_(sorted), lessons_(lessons), model_(model), how_(how) {
        for (const Lesson& lesson : lessons) {
            variance_.push_back(lesson.expected.variance);
        }
    }

    void take(std::size_t next) {
        chosen_.push_back(next);
        if (how_.eagerness > 0.0) {
            learnFrom(next);
        }
    }

    /// Takes the best that fits, again and again, until none does.
    void fill(const ChoiceRules& rules) {
        while (chosen_.size() < rules.count) {
            std::optional<std::size_t> best;
            for (std::size_t k = 0; k < sorted_.size(); ++k) {
                if (std::ranges::find(chosen_, k) == chosen_.end() &&
                    fits(sorted_, chosen_, k, rules) && (!best || valueOf(k) > valueOf(*best))) {
                    best = k;
                }
            }
            if (!best) {
                return;
            }
            take(*best);
        }
    }

    [[nodiscard]] std::vector<std::size_t> chosen() const { return chosen_; }

private:
    [[nodiscard]] double valueOf(std::size_t k) const {
        const learning::Expectation now{0.0, variance_[k]};
        return lessons_[k].expected.rate() *
               (1.0 + how_.eagerness * lessons_[k].sureness * now.relativeWidth());
    }

    void learnFrom(std::size_t i) {
        const double ofDay = model_.sizes().day() * model_.sizes().day();
        const double seen =
            variance_[i] + ofDay + 1.0 / (how_.rodHours * lessons_[i].expected.rate());
        std::vector<double> share(sorted_.size());
        for (std::size_t j = 0; j < sorted_.size(); ++j) {
            double covariance = model_.covarianceOf(lessons_[i].features, lessons_[j].features);
            for (const std::vector<double>& before : learned_) {
                covariance -= before[i] * before[j];
            }
            share[j] = covariance / std::sqrt(seen);
        }
        for (std::size_t j = 0; j < sorted_.size(); ++j) {
            variance_[j] = std::max(variance_[j] - share[j] * share[j], leastVariance);
        }
        learned_.push_back(std::move(share));
    }

    const std::vector<Eligible>& sorted_;
    const std::vector<Lesson>& lessons_;
    const learning::CatchModel& model_;
    LearningRules how_;
    std::vector<double> variance_;
    std::vector<std::vector<double>> learned_; ///< What each chosen one takes off the others.
    std::vector<std::size_t> chosen_;
};

} // namespace

std::vector<std::size_t> chooseToLearn(const std::vector<Eligible>& sorted,
                                       const std::vector<Lesson>& lessons,
                                       const learning::CatchModel& model, const ChoiceRules& rules,
                                       const LearningRules& how) {
    assert(sorted.size() == lessons.size());
    Choice choice(sorted, lessons, model, how);
    for (std::size_t k = 0; k < sorted.size(); ++k) {
        if (sorted[k].isPinned) {
            choice.take(k);
        }
    }
    choice.fill(rules);
    ChoiceRules uncapped = rules;
    uncapped.mostInSection = sorted.size();
    choice.fill(uncapped);
    return choice.chosen();
}

} // namespace marks
