// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readers/soundings_file.h"
#include "core/readers/table_preview.h"

#include <QDialog>

class QComboBox;
class QTableWidget;

namespace days::survey_day {

/// The first rows of a text, with what each column is taken for, the unit of the depths and the
/// decimal mark, to agree to or to change.
class ColumnDialog : public QDialog {
    Q_OBJECT
public:
    ColumnDialog(const QString& file, const readers::TablePreview& preview, QWidget* parent);

    /// `before` with what was chosen.
    [[nodiscard]] readers::SoundingFileSettings
    settings(readers::SoundingFileSettings before) const;

private:
    readers::TablePreview preview_;
    std::vector<QComboBox*> roles_;
    QComboBox* unit_;
    QComboBox* decimalMark_;
    QTableWidget* rows_;
};

} // namespace days::survey_day
