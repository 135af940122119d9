// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/conjugate_gradients.h"

#include <algorithm>
#include <cmath>

namespace surface::solver {

namespace {

constexpr int mostIterations = 100;

template <class Number>
double dot(const ActiveCells& cells, const Field& a, const std::vector<Number>& b) {
    double sum = 0.0;
    for (const ActiveCells::Run& run : cells.runs()) {
        double part = 0.0;
        for (std::size_t p = cells.place(run.begin, run.row); p < cells.place(run.end, run.row);
             ++p) {
            part += a[p] * static_cast<double>(b[p]);
        }
        sum += part;
    }
    return sum;
}

} // namespace

Ended conjugateGradients(const ActiveCells& cells, const Apply& apply, Multigrid& preconditioner,
                         Field& b, Field& x, double tolerance, const base::Progress& progress) {
    Field& residual = b;
    Field direction(cells.places(), 0.0);
    Field product(cells.places(), 0.0);
    apply(x, product);
    cells.forEach([&](std::size_t p, std::size_t) { residual[p] -= product[p]; });
    double previous = 0.0;
    Ended ended;
    while (ended.iterations < mostIterations) {
        if (progress.stopAsked()) {
            ended.wasStopped = true;
            return ended;
        }
        const std::vector<float>& correction = preconditioner.cycle(residual);
        // made conjugate to the direction before, whatever the preconditioner rounded
        const double along = ended.iterations == 0 ? 0.0 : dot(cells, product, correction);
        const double beta = previous > 0.0 ? -along / previous : 0.0;
        cells.forEach([&](std::size_t p, std::size_t) {
            direction[p] = static_cast<double>(correction[p]) + beta * direction[p];
        });
        apply(direction, product);
        const double bend = dot(cells, direction, product);
        const double pull = dot(cells, direction, residual);
        if (!(bend > 0.0) || !std::isfinite(pull)) {
            return ended;
        }
        previous = bend;
        const double step = pull / bend;
        double moved = 0.0;
        cells.forEach([&](std::size_t p, std::size_t) {
            const double change = step * direction[p];
            x[p] += change;
            residual[p] -= step * product[p];
            moved = std::max(moved, std::abs(change));
        });
        ++ended.iterations;
        if (moved < tolerance) {
            break;
        }
    }
    return ended;
}

Ended conjugateGradients(const ActiveCells& cells, const StencilMatrix<double>& matrix,
                         Multigrid& preconditioner, const Field& b, Field& x, double tolerance,
                         int threads, const base::Progress& progress) {
    Field left = b;
    return conjugateGradients(
        cells, [&](const Field& from, Field& to) { multiply(cells, matrix, from, to, threads); },
        preconditioner, left, x, tolerance, progress);
}

} // namespace surface::solver
