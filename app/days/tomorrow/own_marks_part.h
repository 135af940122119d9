// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/day_step.h"

#include <optional>

class QLabel;
class QLineEdit;
class QPushButton;

namespace widgets {
class PlainTable;
}

namespace days::tomorrow {

/// Within "Marks": the user's own marks, pointed at on the chart or typed as they are read off a
/// receiver. They stand here even where the plan has no use for them, so that each can be let go.
class OwnMarksPart : public DayStep {
    Q_OBJECT
public:
    explicit OwnMarksPart(DayContext context);

    DayStepLine refresh() override;

private:
    void layFields();
    void showTyped();
    void addTyped();
    void askPlace();
    void choose(int row);
    void rename(int row, const QString& name);
    void letGo(int row);
    /// What the fields say; nothing where they hold no place.
    [[nodiscard]] std::optional<geo::LonLat> typedPlace() const;
    [[nodiscard]] std::string typedName() const;

    widgets::PlainTable* table_ = nullptr;
    QLineEdit* place_ = nullptr;
    QLineEdit* name_ = nullptr;
    QLabel* about_ = nullptr;
    QLabel* wrong_ = nullptr;
    QPushButton* onChart_ = nullptr;
    QPushButton* add_ = nullptr;
    QPushButton* letGo_ = nullptr;
};

} // namespace days::tomorrow
