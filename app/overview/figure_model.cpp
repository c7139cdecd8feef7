// SPDX-License-Identifier: GPL-3.0-or-later
#include "overview/figure_table.h"

#include "text/whole_quantities.h"
#include "text/words.h"

namespace feedwright {

void FigureModel::put(FigureContent content) {
  if (content == content_) {
    return;
  }
  const bool same_shape = content.names.size() == content_.names.size() &&
                          content.heads.size() == content_.heads.size();
  if (!same_shape) {
    beginResetModel();
    content_ = std::move(content);
    endResetModel();
    return;
  }
  content_ = std::move(content);
  if (!content_.names.isEmpty() && !content_.heads.isEmpty()) {
    emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
    emit headerDataChanged(Qt::Horizontal, 0, columnCount() - 1);
    emit headerDataChanged(Qt::Vertical, 0, rowCount() - 1);
  }
}

const FigureCell& FigureModel::cell(const QModelIndex& index) const {
  return content_.rows.at(static_cast<std::size_t>(index.row()))
      .at(static_cast<std::size_t>(index.column()));
}

int FigureModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : int(content_.names.size());
}

int FigureModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : int(content_.heads.size());
}

QString FigureModel::spoken(const QModelIndex& index) const {
  const FigureCell& at = cell(index);
  QStringList parts{content_.heads[index.column()], content_.names[index.row()], at.text};
  if (!at.against.isEmpty()) {
    parts << tr("wanted %1").arg(at.against);
  }
  if (at.verdict) {
    parts << words::verdict_word(*at.verdict);
  }
  parts.removeAll(QString());
  return parts.join(QStringLiteral(", "));
}

QVariant FigureModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) {
    return {};
  }
  switch (role) {
  case Qt::DisplayRole: return cell(index).text;
  case Qt::AccessibleTextRole: return spoken(index);
  case Qt::ToolTipRole: return QStringLiteral("<p>%1</p>").arg(spoken(index).toHtmlEscaped());
  default: return {};
  }
}

QVariant FigureModel::headerData(int section, Qt::Orientation orientation, int role) const {
  const QStringList& texts = orientation == Qt::Horizontal ? content_.heads : content_.names;
  if (role == Qt::DisplayRole) {
    return with_whole_quantities(texts.value(section)); // no line ends within "m/min"
  }
  if (role == Qt::AccessibleTextRole) {
    return texts.value(section);
  }
  if (role == Qt::ToolTipRole) {
    return QStringLiteral("<p>%1</p>").arg(texts.value(section).toHtmlEscaped());
  }
  return {};
}

} // namespace feedwright
