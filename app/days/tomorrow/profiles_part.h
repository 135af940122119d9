// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/day_step.h"

class QLabel;
class QLineEdit;
class QPushButton;

namespace widgets {
class PlainTable;
}

namespace days::tomorrow {

/// Within "What matters to you": beliefs saved under names, to be used again.
class ProfilesPart : public DayStep {
    Q_OBJECT
public:
    explicit ProfilesPart(DayContext context);

    DayStepLine refresh() override;

private:
    void save();
    void rename(int row, const QString& name);
    void showButtons();
    /// Empty where there is no such row.
    [[nodiscard]] std::string nameAt(int row) const;
    [[nodiscard]] std::string chosen() const;

    widgets::PlainTable* table_ = nullptr;
    QLineEdit* name_ = nullptr;
    QLabel* about_ = nullptr;
    QPushButton* save_ = nullptr;
    QPushButton* use_ = nullptr;
    QPushButton* remove_ = nullptr;
};

} // namespace days::tomorrow
