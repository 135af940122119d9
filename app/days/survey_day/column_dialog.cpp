// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/column_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHeaderView>
#include <QLabel>
#include <QTableWidget>
#include <QVBoxLayout>

namespace days::survey_day {

using readers::ColumnRole;

ColumnDialog::ColumnDialog(const QString& file, const readers::TablePreview& preview,
                           QWidget* parent)
    : QDialog(parent), preview_(preview), unit_(new QComboBox(this)),
      decimalMark_(new QComboBox(this)), rows_(new QTableWidget(this)) {
    setWindowTitle(tr("What do the columns hold?"));
    auto* column = new QVBoxLayout(this);
    column->addWidget(
        new QLabel(tr("%1: say what each column is, and the unit of its depths.").arg(file), this));
    const int columns = static_cast<int>(preview.columns.size());
    rows_->setColumnCount(columns);
    rows_->setRowCount(static_cast<int>(preview.rows.size()) + 1);
    QStringList names;
    for (int c = 0; c < columns; ++c) {
        const auto at = static_cast<std::size_t>(c);
        names.append(QString::fromStdString(preview.columns[at]));
        auto* role = new QComboBox(rows_);
        role->addItems({tr("-"), tr("longitude or east"), tr("latitude or north"), tr("depth"),
                        tr("time"), tr("date")});
        role->setCurrentIndex(
            static_cast<int>(at < preview.roles.size() ? preview.roles[at] : ColumnRole::none));
        rows_->setCellWidget(0, c, role);
        roles_.push_back(role);
        for (std::size_t r = 0; r < preview.rows.size(); ++r) {
            const QString text = at < preview.rows[r].size()
                                     ? QString::fromStdString(preview.rows[r][at])
                                     : QString();
            auto* item = new QTableWidgetItem(text);
            item->setFlags(Qt::ItemIsEnabled);
            rows_->setItem(static_cast<int>(r) + 1, c, item);
        }
    }
    rows_->setHorizontalHeaderLabels(names);
    rows_->verticalHeader()->hide();
    rows_->resizeColumnsToContents();
    column->addWidget(rows_, 1);
    unit_->addItems({tr("metres"), tr("feet"), tr("fathoms")});
    unit_->setCurrentIndex(static_cast<int>(preview.unit));
    auto* form = new QFormLayout;
    form->addRow(tr("Unit of the depths"), unit_);
    decimalMark_->addItems({tr("point: 3.6"), tr("comma: 3,6")});
    decimalMark_->setCurrentIndex(preview.decimalMark == ',' ? 1 : 0);
    form->addRow(tr("Decimal mark"), decimalMark_);
    column->addLayout(form);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    column->addWidget(buttons);
    resize(720, 460);
}

readers::SoundingFileSettings ColumnDialog::settings(readers::SoundingFileSettings before) const {
    before.separator = preview_.separator;
    before.decimalMark = decimalMark_->currentIndex() == 1 ? ',' : '.';
    before.hasHeader = preview_.hasHeader;
    before.unit = static_cast<readers::DepthUnit>(unit_->currentIndex());
    before.columns = {};
    for (std::size_t c = 0; c < roles_.size(); ++c) {
        const std::string number = std::to_string(c + 1);
        switch (static_cast<ColumnRole>(roles_[c]->currentIndex())) {
        case ColumnRole::x:
            before.columns.x = number;
            break;
        case ColumnRole::y:
            before.columns.y = number;
            break;
        case ColumnRole::depth:
            before.columns.depth = number;
            break;
        case ColumnRole::time:
            before.columns.time = number;
            break;
        // A date beside the time is found by the reader itself.
        case ColumnRole::date:
        case ColumnRole::none:
            break;
        }
    }
    return before;
}

} // namespace days::survey_day
