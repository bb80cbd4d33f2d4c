using UnitsNet;

namespace Recipe.Engineering;

/// <summary>What lies beyond one face of a laminate: air, or a mould, at a temperature over time.</summary>
/// <param name="Around">Its temperature; after the end of the schedule the last one.</param>
/// <param name="Transfer">
/// Heat transfer between it and the face; 0 (insulated) to 1e6 W/(m2 K). Still air 5 to 10, with radiation 10 to 15, a fan 20 to 60; a mould
/// of thickness t and conductivity k adds the resistance t/k (from memory).
/// </param>
public sealed record LaminateFaceHeat(CureSchedule Around, HeatTransferCoefficient Transfer);
