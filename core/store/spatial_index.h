// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"

namespace store {

/// Brings what another program keeps of our layers along with them: the spatial indexes of
/// GeoPackage 1.3 (annex F.3) are made anew for layers that have changed (Connection::takeChanged),
/// and counts of their rows are forgotten. Others do so by triggers, but what a trigger in a file
/// says need not be that. Inside the caller's transaction.
void followChanges(Connection& connection);

} // namespace store
