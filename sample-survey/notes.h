// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sample-survey/bottom.h"
#include "sample-survey/chance.h"

#include <string>

namespace sample {

/// Forty notes of weed met, or not met, while drifting the margins: lon,lat,kind,height_m.
std::string weedNotesText(const Bottom& bottom, Chance& chance);
/// Soundings by lead line, already below chart level, with what the tallow brought up:
/// lon,lat,depth_m,bottom.
std::string leadLineText(const Bottom& bottom, Chance& chance);

std::string shorelineText(const Bottom& bottom);
std::string waterText(const Bottom& bottom);
std::string houseRulesText(const Bottom& bottom);

/// The name of the invented water.
inline constexpr const char* waterName = "Quernholt Water";

} // namespace sample
