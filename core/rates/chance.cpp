// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rates/chance.h"

#include <boost/math/special_functions/beta.hpp>
#include <boost/math/special_functions/gamma.hpp>

namespace rates {

namespace {

namespace policies = boost::math::policies;

/// Nothing is thrown: arguments are held to the domain before, and what overflows is infinite.
using Quiet = policies::policy<policies::domain_error<policies::ignore_error>,
                               policies::pole_error<policies::ignore_error>,
                               policies::overflow_error<policies::ignore_error>,
                               policies::evaluation_error<policies::ignore_error>>;

constexpr double tail = 0.025;

} // namespace

double gammaQuantile(double shape, double p) {
    return shape > 0.0 ? boost::math::gamma_p_inv(shape, p, Quiet()) : 0.0;
}

double gammaBelow(double shape, double x) {
    return boost::math::gamma_p(shape, x, Quiet());
}

double betaQuantile(double a, double b, double p) {
    if (!(a > 0.0)) {
        return 0.0;
    }
    return b > 0.0 ? boost::math::ibeta_inv(a, b, p, Quiet()) : 1.0;
}

double binomialAtMost(double most, double tries, double share) {
    if (most < 0) {
        return 0.0;
    }
    return most >= tries ? 1.0 : boost::math::ibetac(most + 1.0, tries - most, share, Quiet());
}

double binomialAtLeast(double least, double tries, double share) {
    if (least <= 0) {
        return 1.0;
    }
    return least > tries ? 0.0 : boost::math::ibeta(least, tries - least + 1.0, share, Quiet());
}

double logGamma(double x) {
    return boost::math::lgamma(x, Quiet());
}

CountLimits countLimits(double count) {
    return {gammaQuantile(count, tail), gammaQuantile(count + 1.0, 1.0 - tail)};
}

} // namespace rates
