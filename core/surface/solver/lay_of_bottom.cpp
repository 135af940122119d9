// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/lay_of_bottom.h"

#include "core/surface/solver/blur.h"
#include "core/surface/solver/gradient.h"

#include <cmath>
#include <utility>

namespace surface::solver {

namespace {

/// Square of a slope too small to show a direction: 0.3 %.
constexpr double flat = 1e-5;

} // namespace

LayOfBottom layOf(const ActiveCells& cells, const Field& depth_m, double blur_m, int threads) {
    Gradient gradient = gradientOf(cells, depth_m);
    Field cross(cells.places(), 0.0);
    cells.forEach([&](std::size_t p, std::size_t) {
        cross[p] = gradient.east[p] * gradient.north[p];
        gradient.east[p] *= gradient.east[p];
        gradient.north[p] *= gradient.north[p];
    });
    Blur(cells, blur_m).replace({&gradient.east, &gradient.north, &cross}, threads);
    LayOfBottom lay;
    for (std::vector<float>* part : {&lay.contours.xx, &lay.contours.xy, &lay.contours.yy}) {
        part->assign(cells.places(), 0.0F);
    }
    cells.forEach([&](std::size_t p, std::size_t) {
        const double a = gradient.east[p];
        const double b = cross[p];
        const double d = gradient.north[p];
        const double spread = std::hypot(a - d, 2.0 * b); // difference of the eigenvalues
        const double coherence = spread / (a + d + flat);
        // t t' = (1 - n n' + its mirror) / 2 with n along the gradient
        const double cosine = spread > 0.0 ? (a - d) / spread : 0.0;
        const double sine = spread > 0.0 ? 2.0 * b / spread : 0.0;
        lay.contours.xx[p] = static_cast<float>(coherence * 0.5 * (1.0 - cosine));
        lay.contours.xy[p] = static_cast<float>(coherence * -0.5 * sine);
        lay.contours.yy[p] = static_cast<float>(coherence * 0.5 * (1.0 + cosine));
        cross[p] = std::sqrt(a + d);
    });
    lay.slope = std::move(cross);
    return lay;
}

} // namespace surface::solver
