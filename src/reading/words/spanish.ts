import type { Language } from "./language";

export const spanish: Language = {
  name: "Spanish",
  headings: {
    dwelling: {
      4: "vivienda, piso, casa, apartamento, departamento, portal, lote, unidad, apto, depto, no vivienda, parcela, chalet, villa, puerta",
      2: "direccion, edificio, bloque, obra",
    },
    fan: {
      4: "extractor, ventilador, no extractor, aparato, extractor no, no de extractor, n extractor",
      2: "equipo, no, ref, boca, etiqueta",
    },
    room: {
      4: "local, cuarto, estancia, habitacion, recinto, espacio, pieza, dependencia",
      3: "lugar, zona, ubicacion, sitio",
    },
    duty: {
      4: "funcionamiento, modo, regimen, control, marcha, accionamiento, mando, operacion, servicio",
      2: "tipo, uso",
    },
    box: {
      4: "no caja, caja no, caja usada, caja de medida",
      3: "caja",
    },
    opening: {
      4: "orificio, abertura, placa, agujero, disco, placa no, no orificio, tapa, anillo, hueco, diafragma",
    },
    area: {
      4: "area, superficie, seccion, area libre, area orificio, area abertura, area del orificio, area abierta, superficie abierta, seccion libre",
      3: "orificio, abertura, agujero, hueco",
    },
    diameter: { 4: "diametro, diameter, diametro orificio, diam, d", 2: "agujero" },
    pressure: {
      4: "presion, dp, depresion, presion caja, presion diferencial, delta p, diferencia de presion, presion en caja, presion de la caja, presion medida, lectura manometro",
      3: "lectura, caja",
    },
    flow: {
      4: "caudal, caudal medido, flujo, caudal real, medido, caudal extraido, caudal de aire, gasto, caudal obtenido, caudal calculado",
      3: "medida, resultado, q, extraccion",
    },
    required: {
      4: "exigido, requerido, minimo, caudal minimo, caudal exigido, necesario, min, exigencia, caudal requerido, debe ser, proyecto, caudal de proyecto, minimo exigido, objetivo",
      2: "norma",
    },
    verdict: {
      4: "cumple, resultado, conforme, apto, estado, veredicto, ok, cumple/no, apto/no apto, dictamen, valoracion, aprobado, pasa",
      2: "control",
    },
    tester: {
      4: "tecnico, operador, medido por, inspector, por, iniciales, nombre, responsable, probado por, realizado por, operario",
      2: "quien",
    },
    date: {
      4: "fecha, dia, fecha de medida, fecha ensayo, medido el, fecha de ensayo, fecha prueba, fecha medicion",
      2: "prueba",
    },
    rated: {
      4: "caudal nominal, nominal, placa de caracteristicas, caudal de catalogo, caudal fabricante",
    },
    constant: { 4: "constante, factor, coeficiente, k, constante caja, factor de caja" },
    note: { 4: "observacion, nota, comentario, accion, incidencia, obs" },
    other: {
      6: "superficie util, superficie vivienda, area de piso, area vivienda, presion casa, presion vivienda, modelo, marca, precio, coste, costo, telefono, temperatura, numero de serie, tipo, planta, correo, correo electronico, diametro conducto, presion atmosferica, precio unitario, coste unitario, superficie del local, area planta, email, importe, no de serie, manometro, tipo de vivienda, superficie construida, viento, presion conducto",
      5: "desviacion, porcentaje, potencia, conducto, hora, ruido, diferencia, altura, volumen, nivel, cantidad, ano, ocupantes, dormitorios, total, raiz",
    },
  },
  rooms: {
    bathroom: "bano, ducha, cuarto de bano, bano principal, bano suite, bano 2",
    "half bath": "aseo, wc, inodoro, medio bano, toilette",
    kitchen: "cocina, office, kitchenette, cocineta",
    "kitchen hood": "campana, campana cocina, campana extractora",
    laundry: "lavadero, lavanderia, tendedero, cuarto de lavado",
    other:
      "trastero, garaje, despensa, pasillo, salon, dormitorio, sotano, almacen, vestidor, cuarto tecnico",
  },
  duties: {
    continuous: "continuo, permanente, siempre, constante, 24h, continua, todo el dia, cont",
    "on demand":
      "interruptor, temporizador, intermitente, a demanda, humedad, sensor, presencia, pulsador, manual, detector, higrostato, bajo demanda, con la luz",
  },
  verdicts: {
    pass: "cumple, si, s, apto, ok, bien, conforme, aprobado, correcto, pasa, bueno, vale",
    fail: "no cumple, no, no apto, mal, no conforme, insuficiente, rechazado, repetir, no pasa, malo, n, falla, bajo, flojo",
    neither: "sin medir, no medido, pendiente, sin acceso, no aplica, np",
  },
  dwellings: "portal, piso, vivienda, casa, apto, bloque, lote, depto, apartamento, chalet",
  totals: "total, media, promedio, suma, subtotal",
  otherTests:
    "estanqueidad, puerta ventilador, fugas, impulsion, presupuesto, infiltraciones, blower door, conductos, factura",
  fanTests: "extraccion, extractores, ventilacion, caudales de extraccion, medicion de extractores",
  retest: "repeticion, segunda medida, nueva medida, reensayo",
  labels: {
    constant: "constante, factor, coeficiente, constante caja, factor de caja",
    start:
      "inicio, comienzo, inicio de obra, fecha de inicio, inicio de los trabajos, empezado el, inicio de mediciones",
    lowest: "presion minima, presion mas baja",
    highest: "presion maxima, presion mas alta",
  },
  sign: {
    box: "caja, campana",
    room: "local, cuarto, sala, habitacion, recinto",
    against: "menos, contra, respecto, frente, relativo, relativa",
    negative: "negativa al extraer, negativo al extraer",
  },
};
