// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

namespace sample {

/// Repeatable chance: the same numbers on every machine. The standard library leaves its
/// distributions to each implementation, so they are written here on top of the SplitMix64
/// generator (Steele, Lea, Flood 2014).
class Chance {
public:
    explicit Chance(std::uint64_t seed) : state_(seed) {}

    std::uint64_t bits();
    /// Even over [0, 1).
    double share();
    double between(double low, double high);
    /// Whole number from low to high, both included.
    int whole(int low, int high);
    bool happens(double probability);
    /// Standard normal, by the polar method of Marsaglia and Bray.
    double normal();
    /// Poisson count; meant for small means.
    int poisson(double mean);

private:
    std::uint64_t state_;
    double spare_ = 0.0;
    bool hasSpare_ = false;
};

/// An error that drifts: Ornstein-Uhlenbeck process with standard deviation `spread` and memory
/// `memory_s` seconds.
class Drift {
public:
    Drift(Chance& chance, double spread, double memory_s);

    double after(double seconds);

private:
    Chance* chance_;
    double spread_;
    double memory_s_;
    double value_;
};

} // namespace sample
