// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/beam_elements.h"

#include <Eigen/Dense>

namespace feedwright::testing {

namespace {

using Eigen::Matrix4d;
using Eigen::MatrixXd;

struct Matrices {
  MatrixXd stiffness, mass, geometric;
};

Matrix4d element_stiffness(double ei, double h) {
  Matrix4d k;
  k << 12, 6 * h, -12, 6 * h,              //
      6 * h, 4 * h * h, -6 * h, 2 * h * h, //
      -12, -6 * h, 12, -6 * h,             //
      6 * h, 2 * h * h, -6 * h, 4 * h * h;
  return k * (ei / (h * h * h));
}

Matrix4d element_mass(double per_length, double h) {
  Matrix4d m;
  m << 156, 22 * h, 54, -13 * h,             //
      22 * h, 4 * h * h, 13 * h, -3 * h * h, //
      54, 13 * h, 156, -22 * h,              //
      -13 * h, -3 * h * h, -22 * h, 4 * h * h;
  return m * (per_length * h / 420.0);
}

Matrix4d element_geometric(double h) {
  Matrix4d g;
  g << 36, 3 * h, -36, 3 * h,           //
      3 * h, 4 * h * h, -3 * h, -h * h, //
      -36, -3 * h, 36, -3 * h,          //
      3 * h, -h * h, -3 * h, 4 * h * h;
  return g / (30.0 * h);
}

MatrixXd assembled(const Matrix4d& element, int elements) {
  MatrixXd whole = MatrixXd::Zero(2 * (elements + 1), 2 * (elements + 1));
  for (int e = 0; e < elements; ++e) {
    whole.block<4, 4>(2 * e, 2 * e) += element;
  }
  return whole;
}

/// Degrees of freedom left by the supports.
std::vector<int> free_degrees(int elements, EndSupport a, EndSupport b) {
  std::vector<int> left;
  const int last = 2 * elements;
  for (int i = 0; i < 2 * (elements + 1); ++i) {
    const bool held = (i == 0 && a != EndSupport::free) || (i == 1 && a == EndSupport::fixed) ||
                      (i == last && b != EndSupport::free) ||
                      (i == last + 1 && b == EndSupport::fixed);
    if (!held) {
      left.push_back(i);
    }
  }
  return left;
}

double bending_stiffness(const Beam& beam) {
  return si_value(beam.modulus) * pi * std::pow(si_value(beam.diameter), 4) / 64.0;
}

} // namespace

AngularVelocity first_critical_speed(const Beam& beam, EndSupport a, EndSupport b) {
  const double h = si_value(beam.length) / beam.elements;
  const double per_length =
      si_value(beam.density) * pi * std::pow(si_value(beam.diameter), 2) / 4.0;
  const auto left = free_degrees(beam.elements, a, b);
  const MatrixXd k = assembled(element_stiffness(bending_stiffness(beam), h), beam.elements);
  const MatrixXd m = assembled(element_mass(per_length, h), beam.elements);
  const Eigen::GeneralizedSelfAdjointEigenSolver<MatrixXd> solver(k(left, left), m(left, left));
  return from_si<AngularVelocity>(std::sqrt(solver.eigenvalues()(0)));
}

Force first_buckling_load(const Beam& beam, EndSupport a, EndSupport b) {
  const double h = si_value(beam.length) / beam.elements;
  const auto left = free_degrees(beam.elements, a, b);
  const MatrixXd k = assembled(element_stiffness(bending_stiffness(beam), h), beam.elements);
  const MatrixXd g = assembled(element_geometric(h), beam.elements);
  // G x = (1/P) K x: the largest 1/P is the lowest load.
  const Eigen::GeneralizedSelfAdjointEigenSolver<MatrixXd> solver(g(left, left), k(left, left));
  return from_si<Force>(1.0 / solver.eigenvalues().maxCoeff());
}

} // namespace feedwright::testing
