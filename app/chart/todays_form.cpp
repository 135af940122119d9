// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/todays_form.h"

#include "app/chart/water_path.h"
#include "app/wording/tongue.h"

namespace chart {

const std::shared_ptr<const water::WaterForm>& formOf(const water::Derived& derived) {
    return derived.today ? derived.today : derived.form;
}

std::optional<QPainterPath> waterLeftOf(const water::Derived& derived, const ViewFrame& view) {
    const auto& form = formOf(derived);
    if (!form || form->waterLeft.empty()) {
        return std::nullopt;
    }
    return screenPath(form->waterLeft, view, 0.3);
}

QString levelOfDepths(const ChartContent& content) {
    const auto& form = formOf(content.derived);
    if (!form || form->rise == units::Length()) {
        return wording::Tongue::tr("depths at chart level");
    }
    return wording::Tongue::tr("depths at %1 from chart level")
        .arg(content.words.levelChange(form->rise));
}

} // namespace chart
