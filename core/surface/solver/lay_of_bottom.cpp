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
    LayOfBottom lay;
    lay.contours.xy.assign(cells.places(), 0.0);
    cells.forEach([&](std::size_t p, std::size_t) {
        lay.contours.xy[p] = gradient.east[p] * gradient.north[p];
        gradient.east[p] *= gradient.east[p];
        gradient.north[p] *= gradient.north[p];
    });
    // on large waters a field is tens of megabytes: none is kept longer than it is needed
    const Blur blur(cells, blur_m);
    lay.contours.xx = std::move(gradient.east);
    lay.contours.yy = std::move(gradient.north);
    blur.replace({&lay.contours.xx, &lay.contours.yy, &lay.contours.xy}, threads);
    lay.slope.assign(cells.places(), 0.0);
    cells.forEach([&](std::size_t p, std::size_t) {
        const double a = lay.contours.xx[p];
        const double b = lay.contours.xy[p];
        const double d = lay.contours.yy[p];
        const double spread = std::hypot(a - d, 2.0 * b); // difference of the eigenvalues
        const double coherence = spread / (a + d + flat);
        lay.slope[p] = std::sqrt(a + d);
        // t t' = (1 - n n' + its mirror) / 2 with n along the gradient
        const double cosine = spread > 0.0 ? (a - d) / spread : 0.0;
        const double sine = spread > 0.0 ? 2.0 * b / spread : 0.0;
        lay.contours.xx[p] = coherence * 0.5 * (1.0 - cosine);
        lay.contours.xy[p] = coherence * -0.5 * sine;
        lay.contours.yy[p] = coherence * 0.5 * (1.0 + cosine);
    });
    return lay;
}

} // namespace surface::solver
