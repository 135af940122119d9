// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/surface/solver/bottom_operator.h"
#include "core/surface/solver/conjugate_gradients.h"
#include "core/surface/solver/lay_of_bottom.h"
#include "core/surface/solver/shore_walls.h"

#include <optional>

namespace surface::solver {

/// What the surface is to be, besides its samples. Lengths in metres.
struct BottomSettings {
    double stiffness = 300.0;     ///< a
    double contourStiffness = 10; ///< b2
    double reach_m = 100.0;       ///< l: how far a misfit of the trend reaches.
    double blur_m = 40.0;         ///< Over which the contours' directions are taken at first;
                                  ///< half of it in the last pass, once they are better known.
    double soundingError_m = 0.08;
    double soundingErrorShare = 0.006;
    double shoreOffset_m = 5.0;
    /// Of the boat's position. Satellite receivers drift by more; but most of that cannot be told
    /// from the shape of the bottom, and with 1.5 m real banks were explained away.
    PositionDrift drift{.deviation_m = 0.8, .reach_m = 35.0};
    int passes = 3;
    int threads = 2;
};

/// The drawn bottom on its cells.
struct Bottom {
    Field depth_m;
    LayOfBottom lay;
    std::size_t soundings = 0; ///< Drawn from.
    int iterations = 0;
    bool wasStopped = false;
};

/// How wide the second pass looks for the directions of contours.
[[nodiscard]] double firstBlur_m(const BottomSettings& settings);
/// How wide the last pass does.
[[nodiscard]] double lastBlur_m(const BottomSettings& settings);

/// Draws one water, again and again with other samples or settings on the same cells. Keeps what
/// does not change.
class BottomDrawer {
public:
    BottomDrawer(const ActiveCells& cells, std::vector<ShorePull> shore, int threads);

    /// z = m + r of least energy:
    /// (z(x) - d)' N^-1 (z(x) - d) + sum over shore of z^2 / s_s^2
    /// + a [ int |H r|^2 + int |grad r|^2 / l^2 + b2 int c^2 (t' H r t)^2 ],
    /// N the errors s_i of the depths and those of positions that drift along the track, once the
    /// slopes are known (TrackPulls); s_s the outline's offset times the slope of the shore there
    /// (shoreSlopeOf()), solved `passes` times with directions t, slopes and Huber weights (at 8
    /// times what a sounding may be off) renewed. From `start`, the bottom after a first pass,
    /// where given.
    [[nodiscard]] Bottom draw(const Field& trend, const std::vector<Sample>& samples,
                              const BottomSettings& settings, std::optional<Bottom> start,
                              const base::Progress& progress);
    /// The same after a few samples have changed, from what was drawn before, whose `lay` is that
    /// of a last pass. New samples are believed at first, as any are.
    [[nodiscard]] Bottom redraw(const Field& trend, const std::vector<Sample>& samples,
                                const BottomSettings& settings, Bottom before,
                                const base::Progress& progress);

private:
    /// What a pass takes from the one before.
    struct Pass {
        bool goesAlongContours;
        bool weighsMisfits;
        bool isLast;
    };
    void takeSlopes(const std::vector<Sample>& samples, const BottomSettings& settings,
                    const Field& depth_m);
    void forgetContours(const std::vector<Sample>& samples, const BottomSettings& settings,
                        Bottom& bottom) const;
    void assemble(const Field& trend, const std::vector<Sample>& samples,
                  const BottomSettings& settings, const Bottom& before, Pass pass,
                  const base::Progress& progress);
    void pullToSamples(const Field& trend, const std::vector<Sample>& samples,
                       const BottomSettings& settings, const Bottom& before, Pass pass);
    void pullToShore(const Field& trend, const BottomSettings& settings, const Bottom& before);
    void solve(const Field& trend, const std::vector<Sample>& samples,
               const BottomSettings& settings, Pass pass, Bottom& bottom,
               const base::Progress& progress);

    const ActiveCells* cells_;
    std::vector<ShorePull> shore_;
    std::vector<double> wallSlopes_; ///< At each, by the samples of this drawing.
    std::vector<TrackPull> pulls_;   ///< Of the samples, in the making.
    BottomOperator operator_;
    Multigrid multigrid_;
    Field right_;
};

} // namespace surface::solver
