// SPDX-License-Identifier: GPL-3.0-or-later
#include "sample-survey/chance.h"

#include <cmath>

namespace sample {

std::uint64_t Chance::bits() {
    state_ += 0x9E3779B97F4A7C15ULL;
    std::uint64_t z = state_;
    z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9ULL;
    z = (z ^ (z >> 27U)) * 0x94D049BB133111EBULL;
    return z ^ (z >> 31U);
}

double Chance::share() {
    return static_cast<double>(bits() >> 11U) * 0x1.0p-53;
}

double Chance::between(double low, double high) {
    return low + (high - low) * share();
}

int Chance::whole(int low, int high) {
    return low + static_cast<int>(share() * static_cast<double>(high - low + 1));
}

bool Chance::happens(double probability) {
    return share() < probability;
}

double Chance::normal() {
    if (hasSpare_) {
        hasSpare_ = false;
        return spare_;
    }
    for (;;) {
        const double u = between(-1.0, 1.0);
        const double v = between(-1.0, 1.0);
        const double s = u * u + v * v;
        if (s > 0.0 && s < 1.0) {
            const double factor = std::sqrt(-2.0 * std::log(s) / s);
            spare_ = v * factor;
            hasSpare_ = true;
            return u * factor;
        }
    }
}

int Chance::poisson(double mean) {
    const double limit = std::exp(-mean);
    int count = 0;
    for (double product = share(); product > limit; product *= share()) {
        ++count;
    }
    return count;
}

Drift::Drift(Chance& chance, double spread, double memory_s)
    : chance_(&chance), spread_(spread), memory_s_(memory_s), value_(spread * chance.normal()) {}

double Drift::after(double seconds) {
    const double kept = std::exp(-seconds / memory_s_);
    value_ = kept * value_ + spread_ * std::sqrt(1.0 - kept * kept) * chance_->normal();
    return value_;
}

} // namespace sample
