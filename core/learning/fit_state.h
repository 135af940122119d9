// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/learning/catch_model.h"
#include "core/learning/observation.h"

#include <span>
#include <vector>

namespace learning {

/// The weights and days while they are being fitted to the stays. Used by fitCatch() alone, which
/// tells when to step.
class FitState {
public:
    /// \param observations at least one.
    FitState(std::vector<Observation> observations, EffectSizes sizes);

    [[nodiscard]] std::size_t days() const { return days_.size(); }
    /// One step of Newton's method. \return by how much the logarithm of some stay's rate would
    /// have moved most, had the step not been held to 2.
    double step();
    /// The same by the curvature of the last step(), which is quick and goes as far where little
    /// has changed since.
    double glide();
    /// Adds to what the user holds of each stay's place. \param beliefs one for each.
    void believe(std::span<const double> beliefs);
    /// The covariance of the weights where they stand, and from it the variance of each stay.
    void findVariances();
    /// Sizes of effects from the weights as they stand: s^2 = (n s0^2 + sum of squares) / (n + the
    /// number of weights that the stays have pinned down).
    void renewSizes(const EffectSizes& from, double countFor, bool renewDay);
    [[nodiscard]] CatchModel model() const;

private:
    /// A weight that a stay has, and where it stands among those of its day.
    struct Touch {
        std::size_t weight = 0;
        double value = 0.0;
        std::size_t inDay = 0;
    };
    using Row = std::vector<Touch>;
    struct Day {
        std::vector<std::size_t> stays;
        std::vector<std::size_t> touched; ///< Positions of weights, ascending.
        std::vector<double> coupling;     ///< With each of them.
        double curvature = 0.0;
        double luck = 0.0;
        double variance = 0.0;
        std::vector<double> covariance; ///< Of the luck with each touched weight.
    };

    void nameWeights();
    void layRows();
    void layOffsets();
    [[nodiscard]] double logRate(std::size_t stay) const;
    /// Curvature and slope of everything, the days already taken out.
    void layEquations();
    [[nodiscard]] double expectedOf(std::size_t stay, const Day& day) const;
    void addStay(std::size_t stay, Day& day, double& slopeOfDay);
    void eliminate(const Day& day, double slopeOfDay);
    void laySlopes();
    double move();
    [[nodiscard]] double precisionOf(std::size_t weight) const;

    std::vector<Observation> observations_;
    EffectSizes sizes_;
    std::vector<CatchModel::WeightName> names_;
    std::vector<Row> rows_;
    std::vector<Day> days_;
    std::vector<double> offsets_;   ///< Of each stay.
    std::vector<double> variances_; ///< Of each stay's logarithm.
    std::vector<double> weights_;
    SymmetricMatrix curvature_;
    std::vector<double> slope_;
    std::vector<double> slopeOfDay_;
    CholeskyFactor factor_;
    SymmetricMatrix covariance_;
};

} // namespace learning
